using NodaTime;
using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Testing.Cases;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Testing.Boxes;

/// <summary>A charge that no engine ran: three sizes of oak in a cabinet, the smaller the faster, and energy that is made up. The numbers mean nothing.</summary>
public static class InventedCharge
{
    private static readonly (string Name, double Radius, int Pieces, ShelfPlace Shelf, double Tau)[] Sizes =
        [("small", 0.07, 40, ShelfPlace.Warm, 2), ("medium", 0.10, 24, ShelfPlace.Middle, 4), ("large", 0.14, 8, ShelfPlace.Cool, 12)];

    /// <summary>An insulated cabinet with its stages: six days of drying, then a closed rest.</summary>
    public static BoxPlan Plan { get; } = new()
    {
        Box = new()
        {
            Volume = 0.6,
            WallArea = 4.5,
            Height = 1.4,
            WallConductance = 1.6,
            WallHeatCapacity = 8000,
            Heater = new(1400, 4, 0.1, HeaterFuel.Electricity, 1),
            Fan = new(0.5, 0.08, 40),
            Vent = new(0, 0.002, null),
            LeakOpening = 0.0008,
        },
        Ambient = new(15, 0.6),
        Stages = [new(StageKind.Drying, 6, 70), new(StageKind.ClosedRest, null, 70)],
        Price = new(0.15, null, "$"),
    };

    /// <summary>The case.</summary>
    public static DryingCase Case(BoxPlan? plan = null)
    {
        IReadOnlyList<Period> periods = [new BoxPeriod(null, plan ?? Plan)];
        var charge = Sizes.Select(size => new ChargeClass(size.Name, Wood(size.Name, size.Radius, periods), size.Pieces, size.Shelf, 0.8)).ToList();
        return charge[0].Wood with { Name = "Oak in an invented cabinet", Charge = charge };
    }

    /// <summary>Its run.</summary>
    public static DryingRun Run(BoxPlan? plan = null)
    {
        var drying = Case(plan);
        var classes = drying.Charge.Zip(Sizes, (one, size) => Class(one, size.Tau)).ToList();
        var run = InventedRun.Of(drying.Charge[0].Wood, air: 0.02, Sizes[0].Tau);
        return run with { Case = drying, Charge = Charge(plan ?? Plan, run.Days, classes) };
    }

    private static ChargeRun Charge(BoxPlan plan, double[] days, IReadOnlyList<ClassRun> classes) => new(
        plan, Series(days), new(40e6, 8e6, 130e6, 52e6, 200e6, 30e6, 0, 0),
        [
            new(0, 0, 0.5, BoxLimit.Heater, 11, 0.2, 0.3, 0.4), new(0, 0.5, 1, BoxLimit.Vapor, 0.4, 0.5, 0.2, 0.3), new(0, 1, 2, BoxLimit.Surface, 0.2, 0.2, 0.5, 0.3),
            new(0, 2, 6, BoxLimit.Inside, 0, 0.05, 0.1, 0.8), new(1, 6, 10, BoxLimit.None, 0, 0, 0, 0),
        ],
        classes, 0.4);

    private static BoxSeries Series(double[] days) => new(
        [.. days.Select(day => 70 - 50 * Math.Exp(-4 * day))], [.. days.Select(day => 0.06 + 0.5 * Math.Exp(-2 * day))], [.. days.Select(day => 62 - 45 * Math.Exp(-3 * day))],
        [.. days.Select(day => 300 + 1100 * Math.Exp(-2 * day))], [.. days.Select(day => 25 * (1 - Math.Exp(-day / 2)))], [.. days.Select(day => 230e6 * day / days[^1])]);

    private static ClassRun Class(ChargeClass one, double tau)
    {
        var run = InventedRun.Of(one.Wood, air: 0.02, tau);
        return new(one, run.Typical, run.LowTenth, run.Median, run.HighTenth, run.Window);
    }

    private static DryingCase Wood(string name, double radius, IReadOnlyList<Period> periods)
    {
        var species = SpeciesCatalogue.Find("northern red oak").Value!;
        return new()
        {
            Name = name,
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromMetres(radius), Angle.FromDegrees(60), Length.FromInches(14)),
            SizeSpread = 0.1,
            Start = new(0.38, 0.22, 0.22, false, 10, new LocalDate(2026, 3, 1)),
            Periods = periods,
            Days = 10,
            ReportEvery = 0.25,
        };
    }
}
