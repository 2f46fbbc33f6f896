using CsCheck;
using NodaTime;
using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Wood;
using Rickyard.Testing.Drying;

namespace Rickyard.Testing.Boxes;

/// <summary>Random boxes with random charges, schedules and weather.</summary>
/// <param name="Plan">Box and stages.</param>
/// <param name="Charge">Classes.</param>
/// <param name="InWeather">Whether the air outside is that of a winter in Iowa instead of steady.</param>
internal sealed record AnyBox(BoxPlan Plan, IReadOnlyList<ChargeClass> Charge, bool InWeather)
{
    private static readonly Gen<BoxVent> Vents = Gen.Select(
        Between(0, 0.01), Between(0, 0.01), Between(0.1, 0.9), Gen.Int[0, 3],
        (flow, opening, humidity, kind) => kind switch
        {
            0 => BoxVent.Shut,
            1 => new BoxVent(flow, 0, null),
            2 => new BoxVent(0, opening, null),
            _ => new BoxVent(flow, opening, humidity),
        });

    private static readonly Gen<BoxHeater> Heaters = Gen.Select(
        Between(0, 4000), Between(0.5, 8), Between(0, 0.8), Gen.Bool, (power, band, radiant, none) => new BoxHeater(none ? 0 : power, band, radiant, HeaterFuel.Gas, 0.8));

    private static readonly Gen<BoxFan> Fans = Gen.Select(
        Between(0, 3), Between(0, 0.3), Between(0, 100), Gen.Bool, (speed, flow, power, none) => none ? new BoxFan(0, 0, 0) : new BoxFan(speed, flow, power));

    private static readonly Gen<BoxDehumidifier?> Dehumidifiers = Gen.Select(
        Between(0.1, 1), Between(1, 3), Between(0.2, 0.8), Gen.Int[0, 2],
        (capacity, efficiency, humidity, kind) => kind == 0 ? null : new BoxDehumidifier(capacity / 3600, efficiency, kind == 1 ? null : humidity));

    private static readonly Gen<BoxSun?> Suns = Gen.Select(
        Between(0.2, 3), Between(0.4, 0.9), Between(2, 7), Gen.Bool, (area, gain, loss, none) => none ? null : new BoxSun(area, gain, loss, 1.2));

    private static readonly Gen<BoxDescription> Boxes = Gen.Select(
        Gen.Select(Between(0.2, 8), Between(0.2, 8), Between(500, 30000), Between(0, 0.004)), Heaters, Fans, Vents, Dehumidifiers, Suns,
        (walls, heater, fan, vent, dehumidifier, sun) => new BoxDescription
        {
            Volume = walls.Item1,
            WallArea = 6 * Math.Pow(walls.Item1, 2.0 / 3),
            Height = Math.Cbrt(walls.Item1),
            WallConductance = walls.Item2,
            WallHeatCapacity = walls.Item3,
            LeakOpening = walls.Item4,
            Heater = heater,
            Fan = fan with { Power = Math.Min(fan.Power, 20 * walls.Item2 * walls.Item1) },
            Vent = vent,
            Dehumidifier = dehumidifier,
            Sun = sun is null || walls.Item2 < 1 ? null : sun with { Area = Math.Min(sun.Area, walls.Item1) / 4 },
        });

    private static readonly Gen<BoxStage> Stages = Gen.Select(
        Gen.Enum<StageKind>(), Between(0.1, 2), Between(20, 85), Gen.Bool, Vents, Gen.Bool,
        (kind, days, celsius, heated, vent, own) => new BoxStage(kind, days, heated ? celsius : null, own ? vent : null));

    private static readonly Gen<ChargeClass> Classes = Gen.Select(
        AnyPiece.OfAnyShape, Between(0.06, 0.9), Between(-20, 30), Gen.Int[1, 60], Gen.Enum<ShelfPlace>(), Between(0.2, 1), Between(0.2, 3),
        (split, moisture, celsius, pieces, shelf, exposed, pull) =>
        {
            var wood = SpeciesCatalogue.Find("red maple").Value!;
            return new ChargeClass("any", new()
            {
                Name = "any",
                Species = wood,
                BasicDensity = wood.BasicDensity.Value.KilogramsPerCubicMetre,
                Split = split,
                Start = new(moisture, null, null, false, celsius, new LocalDate(2026, 1, 1)),
                Periods = [],
                Days = 4,
                ReportEvery = 1,
            }, pieces, shelf, exposed) { PullDay = pull < 1.5 ? pull : null };
        });

    /// <summary>Evenly spread, unlike CsCheck's own, which likes numbers next to nothing.</summary>
    private static Gen<double> Between(double low, double high) => Gen.Int[0, 10000].Select(part => low + (high - low) * part / 10000);

    /// <summary>Random ones.</summary>
    internal static Gen<AnyBox> Any { get; } = Gen.Select(
        Boxes, Stages.List[1, 3], Classes.List[1, 3], Between(-25, 30), Between(0.2, 0.95), Gen.Bool,
        (box, stages, charge, celsius, humidity, weather) => new AnyBox(new() { Box = box, Ambient = new(celsius, humidity), Stages = stages }, charge, weather));

    /// <summary>All of it, lists too.</summary>
    internal string Told => string.Join("\n", Plan.Stages.Select(stage => stage.ToString())
        .Concat(Charge.Select(one => $"{one.Pieces} of {one.Wood.Split}, start {one.Wood.Start}, {one.Shelf}, exposed {one.ExposedShare}, pulled {one.PullDay}")).Prepend(ToString()));

    /// <summary>Run it for four days.</summary>
    internal BoxTrace Run() => SampleBox.Run(
        Plan, Charge, InWeather ? OutsideSeries.Of(DesMoinesYear.Weather) : OutsideSeries.Steady(Plan.Ambient.Celsius, Plan.Ambient.RelativeHumidity), 4, 8);
}
