using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Testing.Runs;

/// <summary>
/// An invented run: a made-up field that dries from its bare faces inward, for pictures and words where no solver is wanted. The numbers look
/// like drying oak and mean nothing.
/// </summary>
public sealed record SampleRun
{
    /// <summary>The piece.</summary>
    public Split Split { get; init; } = Split.Wedge(Length.FromMillimetres(125), Angle.FromDegrees(60), Length.FromMillimetres(405));

    /// <summary>Name of the case.</summary>
    public string Name { get; init; } = "Invented example: white oak from an invented yard";

    /// <summary>Day of the start.</summary>
    public LocalDate Start { get; init; } = new(2024, 10, 12);

    /// <summary>Length of the run. [d]</summary>
    public double Days { get; init; } = 400;

    /// <summary>Moisture at the start. [kg kg⁻¹]</summary>
    public double Green { get; init; } = 0.72;

    /// <summary>Moisture it tends to. [kg kg⁻¹]</summary>
    public double Dry { get; init; } = 0.115;

    /// <summary>How fast it dries; 1.2 is about nine months to the band.</summary>
    public double Pace { get; init; } = 1.2;

    /// <summary>Days of the cuts; empty for five evenly spread.</summary>
    public IReadOnlyList<double> CutDays { get; init; } = [];

    /// <summary>How much faster the middle of the lot dries than the typical split; 1 where they are the same.</summary>
    public double MiddlePace { get; init; } = 0.96;

    /// <summary>The run.</summary>
    public DryingRun Build()
    {
        double[] days = [.. Enumerable.Range(0, 161).Select(i => Days * i / 160)];
        double[] cuts = CutDays.Count > 0 ? [.. CutDays] : [.. Enumerable.Range(0, 5).Select(i => days[i * 160 / 4])];
        var typical = Series(days, Pace);
        var window = Window();
        return new()
        {
            Case = Case(),
            Days = days,
            Typical = typical,
            LowTenth = Series(days, 1.22 * Pace),
            Median = Series(days, MiddlePace * Pace),
            HighTenth = Series(days, 0.82 * Pace),
            Window = window,
            Snapshots = [.. cuts.Select(day => SampleField.At(Split, day * Pace, Green, Dry) with { Day = day })],
            AirEquilibrium = [.. days.Select(_ => Dry)],
            SurfaceShare = [.. days.Select(_ => 0.2)],
            Notes = ["Invented."],
            Members = 64,
            Seed = 1,
            ModelVersion = "0.1",
            Seconds = 0,
        };
    }

    private MoistureSeries Series(double[] days, double pace)
    {
        var fields = days.Select(day => SampleField.At(Split, day * pace, Green, Dry)).ToArray();
        double[] mean = [.. fields.Select(SampleField.Mean)];
        double[] none = [.. days.Select(_ => 15.0)];
        return new(mean, [.. fields.Select(SampleField.Core)], [.. fields.Select(SampleField.Shell)], [.. fields.Select(SampleField.End)], none, none, none);
    }

    private ReadyWindow Window()
    {
        DaySpread When(double moisture) => new(Crossing(1.22, moisture), Crossing(MiddlePace, moisture), Crossing(0.82, moisture));
        var from = When(0.20);
        return new(0.18, 0.20, from, When(0.18), from.Late is not null ? 0.96 : from.Middle is not null ? 0.7 : from.Early is not null ? 0.2 : 0);
    }

    private double? Crossing(double factor, double moisture)
    {
        double CoreAt(double day) => SampleField.Core(SampleField.At(Split, day * factor * Pace, Green, Dry));
        if (CoreAt(Days) > moisture) return null;
        double early = 0, late = Days;
        while (late - early > Days / 1000) (early, late) = CoreAt((early + late) / 2) > moisture ? ((early + late) / 2, late) : (early, (early + late) / 2);
        return CoreAt(0) <= moisture ? 0 : late;
    }

    private DryingCase Case()
    {
        var species = SpeciesCatalogue.Find("white oak").Value!;
        return new()
        {
            Name = Name,
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split,
            Pieces = 60,
            SizeSpread = 0.2,
            Start = new(Green, null, null, true, 10, Start),
            Periods = [new SteadyPeriod(null, 15, 0.7, null)],
            Days = Days,
            ReportEvery = Days / 160,
        };
    }
}
