using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.Outlook;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning;

/// <summary>One case with its observations, made ready: which numbers the engine is asked for, and who needs them.</summary>
internal sealed class Lesson
{
    /// <summary>Part of the work that is runs of the engine, for the progress bar; measured.</summary>
    private const double RunsPart = 0.8;

    private readonly ObservedLotBuilder _builder;

    /// <summary>Make it ready.</summary>
    /// <param name="drying">The case, as <see cref="LearningCase"/> has it.</param>
    /// <param name="observations">What was observed.</param>
    /// <param name="request">Members, draws, seed, band, today.</param>
    internal Lesson(DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request)
    {
        (Case, Observations, Request) = (drying, observations, request);
        Today = Math.Min(drying.Days, request.Today ?? observations.Select(one => one.From.Day).DefaultIfEmpty(0).Max());
        Unknowns = LotUnknowns.Of(drying);
        Series = SeriesOutputs.Ask(Outputs, [.. DryingForecast.ReportDays(drying).Append(Today).Distinct().Order()]);
        Choices = new(Outputs, Today);
        _builder = new(observations, LearningCase.IsLot(drying), Outputs);
    }

    internal DryingCase Case { get; }

    internal IReadOnlyList<Observation> Observations { get; }

    internal LearningRequest Request { get; }

    internal double Today { get; }

    internal LotUnknowns Unknowns { get; }

    internal SeriesOutputs Series { get; }

    internal ReadingChoices Choices { get; }

    /// <summary>What the engine is asked for.</summary>
    internal OutputTable Outputs { get; } = new();

    /// <summary>Runs of the engine for it.</summary>
    internal EngineDesign Design(CaseAir air) => new(Case, air, Unknowns, Outputs, Request.Seed);

    /// <summary>The engine's stand-in from a sample.</summary>
    internal StandIn StandIn(EngineSample sample) => StandInFit.Of(sample, Outputs.All, [.. Series.Core, .. Series.Mean, .. _builder.Outputs], Case.Periods.Any(period => period is RackPeriod));

    /// <summary>What was observed, with the stand-in's errors.</summary>
    internal ObservedLot Observed(StandIn standIn) => _builder.Build(standIn);

    /// <summary>Run, fit, infer.</summary>
    internal Lessons Learn(CaseAir air, IProgress<double>? progress, CancellationToken cancellation)
    {
        var typical = TypicalSplit.Run(Case, air, Series.Days, cancellation);
        var sample = Design(air).Run(Request.Members, progress is null ? null : new PartOfProgress(progress, 0, RunsPart), cancellation);
        var standIn = StandIn(sample);
        var observed = Observed(standIn);
        var chains = LotChains.Run(Unknowns, standIn, observed, Request.Draws, Request.Seed, cancellation);
        progress?.Report(1);
        return new(this, typical, standIn, observed, chains);
    }
}
