using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;
using Rickyard.Core.Wood;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Testing.Cases;

/// <summary>Cases of usual splits (16 in long wedges of 60° in bark), run with few members: the typical split is what is looked at.</summary>
public static class PracticeCase
{
    private const int FewestMembers = 4;

    /// <summary>Outdoors on a rack, two rows deep, covered on top, part sun, open to the wind.</summary>
    public static DryingRun OnRack(string species, double radius, string place, LocalDate start, double days, IReadOnlyList<double>? cutOpen = null)
    {
        var weather = new WeatherName(null, place);
        var scenario = WeatherScenario.FromNormals(NormalsCatalogue.Find(place).Value!);
        var drying = Case(species, radius, SpeciesCatalogue.Find(species).Value!.GreenMoisture.Mean, start, [new RackPeriod(null, weather, new RackDescription(Rows: 2))], days, 5);
        return DryingForecast.Run(drying, new(FewestMembers, SnapshotDays: cutOpen), new Dictionary<WeatherName, WeatherScenario> { [weather] = scenario });
    }

    /// <summary>In steady air, or a chain of periods.</summary>
    public static DryingRun Through(string species, double radius, double moisture, IReadOnlyList<Period> periods, double days, double every = 1) => DryingForecast.Run(
        Case(species, radius, moisture, new(2026, 1, 1), periods, days, every), new(FewestMembers), new Dictionary<WeatherName, WeatherScenario>());

    /// <summary>A green piece of a wood in a room: for what depends on split and wood alone.</summary>
    public static DryingCase Of(string species, Split split) =>
        Case(species, 0.1, SpeciesCatalogue.Find(species).Value!.GreenMoisture.Mean, new(2026, 1, 1), [new SteadyPeriod(null, 20, 0.6, null)], 30, 1) with { Split = split };

    private static DryingCase Case(string name, double radius, double moisture, LocalDate start, IReadOnlyList<Period> periods, double days, double every)
    {
        var species = SpeciesCatalogue.Find(name).Value!;
        return new()
        {
            Name = name,
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromMetres(radius), Angle.FromDegrees(60), Length.FromInches(16)),
            Start = new(moisture, null, null, false, 10, start),
            Periods = periods,
            Days = days,
            ReportEvery = every,
        };
    }
}
