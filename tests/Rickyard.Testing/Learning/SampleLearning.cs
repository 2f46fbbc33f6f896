using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Testing.Learning;

/// <summary>
/// An invented forecast that says it has learnt: every part of a split falls exponentially towards one moisture. Nothing was run, read or weighed; the numbers mean nothing.
/// </summary>
public sealed record SampleLearning
{
    private const double DryMass = 2.0;

    /// <summary>Moisture at the start. [kg kg⁻¹]</summary>
    public double Start { get; init; } = 0.62;

    /// <summary>Moisture it tends to. [kg kg⁻¹]</summary>
    public double Air { get; init; } = 0.13;

    /// <summary>Time constant of the middle core. [d]</summary>
    public double Tau { get; init; } = 110;

    /// <summary>Day the forecast starts from. [d]</summary>
    public double Today { get; init; } = 150;

    /// <summary>Whether the case has a date.</summary>
    public bool IsDated { get; init; } = true;

    /// <summary>Pieces of the lot.</summary>
    public int? Pieces { get; init; } = 120;

    /// <summary>What was observed.</summary>
    public IReadOnlyList<ObservationFit> Observed { get; init; } = SampleObservations.Ten;

    /// <summary>Marked splits, with how much slower than the middle each dries.</summary>
    public IReadOnlyList<(string Name, double Slow)> Marked { get; init; } = [("7", 1.12), ("12", 0.9)];

    /// <summary>The lot in the fifth month of its summer, ten readings, one of them wrong.</summary>
    public static SampleLearning Usual { get; } = new();

    /// <summary>The same with one reading and no marked split.</summary>
    public static SampleLearning OneReading { get; } = new() { Observed = [SampleObservations.Ten[0]], Marked = [] };

    /// <summary>Wood in air too damp to get there.</summary>
    public static SampleLearning Unready { get; } = new() { Air = 0.23 };

    /// <summary>Wood that is already too dry.</summary>
    public static SampleLearning OverDry { get; } = new() { Air = 0.10, Tau = 90, Today = 330 };

    /// <summary>Wood that is in the band today, and the weather of a single piece without a date.</summary>
    public static SampleLearning ReadyPiece { get; } = new() { Today = 220, IsDated = false, Pieces = null, Marked = [] };

    private double[] Days { get; } = [.. Enumerable.Range(0, 141).Select(i => 3.0 * i)];

    /// <summary>The run.</summary>
    public LearningRun Build(LearningRequest? request = null)
    {
        var asked = request ?? new();
        return new()
        {
            Case = Case(),
            Days = Days,
            Today = asked.Today ?? Today,
            LowTenth = Series(0.85),
            Median = Series(1),
            HighTenth = Series(1.18),
            LotCore = Spreads(day => Core(day, 0.93), day => Core(day, 1), day => Core(day, 1.08)),
            CoreBefore = Spreads(day => Core(day, 0.6), day => Core(day, 0.95), day => Core(day, 1.6)),
            ShareInBand = Spreads(day => Share(day, asked) * 0.7, day => Share(day, asked), day => Math.Min(1, Share(day, asked) * 1.25)),
            LotWindow = Window(asked, 0.93, 1, 1.08),
            LotWindowBefore = Window(asked, 0.75, 1.02, 1.4),
            Window = Window(asked, 0.85, 1, 1.18),
            WindowBefore = Window(asked, 0.6, 0.95, 1.6),
            Pieces = [.. Marked.Select(piece => Piece(piece.Name, piece.Slow, asked))],
            Unknowns = Observed.Count > 1 ? Learnt : [],
            Observations = Observed,
            Next = Gains,
            Probe = new(0.036, 11),
            OverDry = Core(Today, 1) < asked.BandLow ? new(0.86, 0.87, Pieces is null ? null : 396) : null,
            Health = new(1430, 1.004, 0.006, 0.8, 0.9, Observed.Count > 1 ? [] : ["With one reading the case says more than the wood does."]),
            AirEquilibrium = [.. Days.Select(_ => Air)],
            Notes = ["An invented run: no wood dried like this."],
            Request = asked,
            ModelVersion = "invented-1",
            Seconds = 0.1,
        };
    }

    private static LearntUnknown[] Learnt =>
    [
        new("start moisture", "% dry basis", new(52, 62, 72), new(58, 61.5, 65)),
        new("drying rate of the wood", "× the usual", new(0.72, 1, 1.38), new(0.68, 0.81, 0.9)),
        new("width of the splits", "× as described", new(0.94, 1, 1.06), new(0.95, 1.01, 1.06)),
        new("air between the splits", "× as described", new(0.7, 1, 1.4), new(0.9, 1.24, 1.5)),
        new("error of the meter on this wood (Douglas-fir scale)", "points", new(-1.8, 0, 1.8), new(0.3, 1.1, 1.9)),
    ];

    private static ReadingGain[] Gains =>
    [
        new("split 3 open and probe their cores", new(PinPlace.FreshCore), "", true, 62, 41),
        new("split one open and probe its core", new(PinPlace.FreshCore), "", true, 62, 50),
        new("dry a section from the middle of one split in an oven", null, "", true, 62, 47.5),
        new("split 7 open and probe its core", new(PinPlace.FreshCore), "7", true, 62, 52),
        new("weigh 12 again", null, "12", false, 62, 58),
        new("probe the split faces of 3 splits at mid-length", new(PinPlace.SplitFace), "", false, 62, 61.8),
    ];

    private double Fall(double day, double tau) => Air + (Start - Air) * Math.Exp(-day / tau);

    private double Core(double day, double slow) => Fall(day, slow * Tau);

    private double Share(double day, LearningRequest asked)
    {
        var core = Core(day, 1);
        double Below(double level) => 1 / (1 + Math.Exp((core - level) / 0.02));
        return Below(asked.BandHigh) - Below(asked.BandLow);
    }

    private MoistureSeries Series(double slow)
    {
        double[] Each(double quick) => [.. Days.Select(day => Fall(day, slow * Tau / quick))];
        var mean = Each(1.25);
        double[] mass = [.. mean.Select(moisture => DryMass * (1 + moisture))];
        return new(mean, Each(1), Each(1.9), Each(3), [.. Days.Select(_ => 15.0)], mass, [.. mass.Select(now => 1 - now / mass[0])]);
    }

    private Spread[] Spreads(Func<double, double> low, Func<double, double> middle, Func<double, double> high) =>
        [.. Days.Select(day => new Spread(low(day), middle(day), high(day)))];

    private ReadyWindow Window(LearningRequest asked, double fast, double middle, double slow)
    {
        DaySpread When(double level) => new(Crossing(level, fast), Crossing(level, middle), Crossing(level, slow));
        var from = When(asked.BandHigh);
        return new(asked.BandLow, asked.BandHigh, from, When(asked.BandLow), from.Late is not null ? 1 : from.Middle is not null ? 0.8 : 0.1);
    }

    private double? Crossing(double level, double slow) =>
        Air < level && slow * Tau * Math.Log((Start - Air) / (level - Air)) is var day && day <= Days[^1] ? day : null;

    private PieceForecast Piece(string name, double slow, LearningRequest asked)
    {
        var ready = Crossing(asked.BandHigh, slow) is { } day ? DryMass * (1 + Fall(day, slow * Tau / 1.25)) : (double?)null;
        return new(
            name, Series(0.96 * slow), Series(slow), Series(1.05 * slow), Window(asked, 0.96 * slow, slow, 1.05 * slow),
            ready is { } mass ? new(0.985 * mass, mass, 1.012 * mass) : null);
    }

    private DryingCase Case()
    {
        var species = SpeciesCatalogue.Find("northern red oak").Value!;
        return new()
        {
            Name = "Red oak by an invented fence",
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromInches(5), Angle.FromDegrees(45), Length.FromInches(16)),
            Pieces = Pieces,
            SizeSpread = Pieces > 1 ? 0.2 : 0,
            Start = new(Start, null, null, true, 8, new LocalDate(2026, 3, 15)) { IsDated = IsDated },
            Periods = [new SteadyPeriod(null, 15, 0.7, null)],
            Days = Days[^1],
            ReportEvery = 3,
        };
    }
}
