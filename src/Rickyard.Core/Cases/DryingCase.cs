using NodaTime;
using Rickyard.Core.Boxes;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Cases;

/// <summary>One split or lot in known air: a case file after every name and quantity in it has been understood.</summary>
public sealed record DryingCase
{
    /// <summary>What the person called it.</summary>
    public required string Name { get; init; }

    /// <summary>The wood.</summary>
    public required Species Species { get; init; }

    /// <summary>Oven-dry mass over green volume: the species' value unless the case gives its own. [kg m⁻³]</summary>
    public required double BasicDensity { get; init; }

    /// <summary>Drying rate relative to the species model; null takes the species' prior with its spread, a given value has none.</summary>
    public double? RateFactor { get; init; }

    /// <summary>The typical piece.</summary>
    public required Split Split { get; init; }

    /// <summary>Number of pieces; null for one split.</summary>
    public int? Pieces { get; init; }

    /// <summary>Relative standard deviation of the pieces' width about the typical one; 0 for one split.</summary>
    public double SizeSpread { get; init; }

    /// <summary>Moisture and temperature at the start.</summary>
    public required CaseStart Start { get; init; }

    /// <summary>Relative standard deviation of the start moisture from piece to piece and from what was said; null takes the usual (physics.md, E1).</summary>
    public double? StartSpread { get; init; }

    /// <summary>What happens to it, in order; the last one is held to the end of the run.</summary>
    public required IReadOnlyList<Period> Periods { get; init; }

    /// <summary>Length of the run. [d]</summary>
    public required double Days { get; init; }

    /// <summary>Time between reports. [d]</summary>
    public required double ReportEvery { get; init; }

    /// <summary>The classes of a charge in a hot box, the first of them with this case's wood and split; empty outside of one.</summary>
    public IReadOnlyList<ChargeClass> Charge { get; init; } = [];

    /// <summary>The moisture the cook wants, as their own meter shows it; null where the case does not say.</summary>
    public CooksBand? Cook { get; init; }

    /// <summary>What the case says was read, weighed and seen of the lot, in its order.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>Defaults that were taken for left-out fields and guesses that were made, each a sentence.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>The case file as it was read, for the record of the run.</summary>
    public string SourceText { get; init; } = "";

    /// <summary>Day of the start, for weather by the calendar.</summary>
    public LocalDate StartDate => Start.At;

    /// <summary>Every weather it names, of racks and of the air outside a box, each once, in order of time.</summary>
    public IReadOnlyList<WeatherName> Weather => [.. Periods.Select(WeatherOf).OfType<WeatherName>().Distinct()];

    private static WeatherName? WeatherOf(Period period) => period switch
    {
        RackPeriod rack => rack.Weather,
        BoxPeriod box => box.Plan.Ambient.Weather,
        _ => null,
    };
}
