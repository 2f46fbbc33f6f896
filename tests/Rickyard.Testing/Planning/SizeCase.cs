using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Testing.Planning;

/// <summary>Cases to ask sizes of: a lot of red oak wedges of 45° in bark, 16 in long, 11 cm wide, at 60 %.</summary>
public static class SizeCase
{
    /// <summary>In a warm room or cabinet with moving air.</summary>
    public static DryingCase InAir(double celsius = 40, double humidity = 0.30, double speed = 1) => Of([new SteadyPeriod(null, celsius, humidity, speed)]);

    /// <summary>Through any periods.</summary>
    public static DryingCase Of(IReadOnlyList<Period> periods)
    {
        var species = SpeciesCatalogue.Find("northern red oak").Value!;
        return new()
        {
            Name = "Sizes (invented)",
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromMetres(0.11), Angle.FromDegrees(45), Length.FromInches(16)),
            Pieces = 100,
            SizeSpread = 0.2,
            Start = new(0.60, null, null, false, 15, new LocalDate(2026, 3, 15)),
            Periods = periods,
            Days = 30,
            ReportEvery = 1,
        };
    }
}
