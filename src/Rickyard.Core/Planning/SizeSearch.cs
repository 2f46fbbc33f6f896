using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Planning;

/// <summary>
/// Finds the largest split whose core is dry enough by a day, in as many of the members as asked for. The shape and the length of the piece stay; its width is varied over
/// <see cref="SizeSteps.Fine"/>. A larger piece dries later in every member, so that the sizes can be halved between; a first guess follows from about the power of the
/// width that drying times go with, 1.7 (between 1 of the surface and 2 of the inside; a guess saves runs and does not enter the answer).
/// </summary>
public sealed class SizeSearch
{
    private const double GuessedExponent = 1.7, Beyond = 1.25;

    private readonly SizeRequest _request;
    private readonly SizeRuns _runs;
    private readonly IProgress<double>? _progress;
    private readonly SortedDictionary<int, (SizeTrial Trial, DryingRun Run)> _tried = [];

    private SizeSearch(SizeRequest request, SizeRuns runs, IProgress<double>? progress) => (_request, _runs, _progress) = (request, runs, progress);

    /// <summary>Search, or say what keeps the question from having an answer.</summary>
    /// <param name="drying">The case; its own size is tried first, its length of run does not count.</param>
    /// <param name="request">The question.</param>
    /// <param name="weather">The weather of every place the case names.</param>
    /// <param name="progress">Told about how much is done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static Result<SizeAnswer> Run(
        DryingCase drying, SizeRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        Problem[] problems = [.. SizeProblems.Of(drying, request)];
        if (problems.Length > 0) return ResultOf.Failure<SizeAnswer>(problems);
        var runs = new SizeRuns(drying, new(request.Members, request.Seed, request.BandHigh / 2, request.BandHigh), weather, cancellation);
        return ResultOf.Success(new SizeSearch(request, runs, progress).Answer(drying));
    }

    private SizeAnswer Answer(DryingCase drying)
    {
        var largest = Largest(NearestStep(SplitWidth.Across(drying.Split)));
        return new()
        {
            Case = drying,
            Request = _request,
            Largest = largest < 0 ? null : SizeSteps.Fine[largest],
            Trials = [.. _tried.Values.Select(tried => tried.Trial)],
            Run = _tried[Math.Max(largest, 0)].Run,
        };
    }

    /// <summary>Step of the largest size that passes; -1 for none.</summary>
    private int Largest(int first)
    {
        var (passing, failing, next) = (-1, SizeSteps.Fine.Count, first);
        while (failing - passing > 1)
        {
            if (Passes(next)) passing = next;
            else failing = next;
            next = Next(next, passing, failing);
        }

        return passing;
    }

    /// <summary>Halfway where both sides are known, else where the last size tried points to.</summary>
    private int Next(int last, int passing, int failing)
    {
        if (passing >= 0 && failing < SizeSteps.Fine.Count) return (passing + failing) / 2;
        return Math.Clamp(NearestStep(Guess(_tried[last].Trial)), passing + 1, Math.Max(passing + 1, failing - 1));
    }

    private double Guess(SizeTrial last) => last.DayOf(_request.Confidence) is { } day
        ? last.Width * Math.Pow(_request.NeededDays / Math.Max(day, _request.NeededDays / 50), 1 / GuessedExponent)
        : last.Width * 0.7;

    private bool Passes(int step)
    {
        var run = _runs.Run(SizeSteps.Fine[step], _request.NeededDays * Beyond, _request.NeededDays, _progress is null ? null : new Part(_progress, _tried.Count));
        var trial = new SizeTrial(SizeSteps.Fine[step], run.Window.FirstDays);
        _tried[step] = (trial, run);
        return trial.ChanceBy(_request.NeededDays) >= _request.Confidence - 1e-9;
    }

    private static int NearestStep(double width) => Enumerable.Range(0, SizeSteps.Fine.Count).MinBy(step => Math.Abs(SizeSteps.Fine[step] - width));

    /// <summary>How far a search of unknown length has come: every run takes a third of what is left.</summary>
    private sealed record Part(IProgress<double> Whole, int Done) : IProgress<double>
    {
        public void Report(double value) => Whole.Report(1 - Math.Pow(2.0 / 3, Done + value));
    }
}
