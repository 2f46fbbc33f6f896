using MathNet.Numerics.Statistics;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Verification;

/// <summary>Runs every measured case with inputs fixed beforehand and no factor tuned to it.</summary>
public static class VerificationRun
{
    /// <summary>Members behind each band: enough for a tenth, few enough for a run of seconds.</summary>
    public const int Members = 32;

    /// <summary>Seed of every draw.</summary>
    public const int Seed = 1;

    /// <summary>Run all.</summary>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="heatingRatios">Gives predicted over printed heating times; null leaves that case out.</param>
    /// <param name="cancellation">Stops the run between reports.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static VerificationReport Run(
        IProgress<double>? progress = null, Func<IReadOnlyList<double>>? heatingRatios = null, CancellationToken cancellation = default)
    {
        var request = new DryingRequest(Members, Seed);
        var runs = Pieces(request, part => progress?.Report(0.7 * part), cancellation);
        var law = KilnBoard.Points(cancellation);
        progress?.Report(0.8);
        VerificationRow[] rows = [.. MeasuredCases.All.Select(measured => Row(measured, runs, request, heatingRatios, cancellation)).OfType<VerificationRow>()];
        var beside = BesideFacts.All(runs, cancellation);
        progress?.Report(1);
        return new(rows, law, beside, Members, Seed, ModelVersion.Current);
    }

    /// <summary>One case whose piece stands on a rack, in other weather than the shipped normals: how far weather alone moves it.</summary>
    /// <param name="measured">A case of <see cref="MeasuredCases"/>.</param>
    /// <param name="weather">The weather instead.</param>
    public static Prediction InWeather(MeasuredCase measured, WeatherScenario weather)
    {
        var drying = AssumedPiece.All.Single(piece => piece.Id == measured.Id).Case();
        var rack = drying.Periods.OfType<RackPeriod>().Single();
        var run = DryingForecast.Run(drying, new(Members, Seed), new Dictionary<WeatherName, WeatherScenario> { [rack.Weather] = weather });
        return RunReading.Of(measured, run);
    }

    private static ILookup<string, DryingRun> Pieces(DryingRequest request, Action<double> done, CancellationToken cancellation)
    {
        List<(string Id, DryingRun Run)> runs = [];
        foreach (var piece in AssumedPiece.All)
        {
            runs.Add((piece.Id, DryingForecast.Run(piece.Case(), request, Weather(piece), null, cancellation)));
            done(runs.Count / (double)AssumedPiece.All.Count);
        }

        return runs.ToLookup(run => run.Id, run => run.Run);
    }

    private static Dictionary<WeatherName, WeatherScenario> Weather(AssumedPiece piece) =>
        new() { [new(null, piece.Air.Place)] = WeatherScenario.FromNormals(NormalsCatalogue.Find(piece.Air.Place).Value!) };

    private static VerificationRow? Row(
        MeasuredCase measured, ILookup<string, DryingRun> runs, DryingRequest request, Func<IReadOnlyList<double>>? heatingRatios, CancellationToken cancellation) =>
        measured.Reading switch
        {
            CaseReading.Heating => heatingRatios is null ? null : new(measured, Heating(heatingRatios()), ""),
            CaseReading.TimeConstant => new(measured, KilnBoard.TimeConstant(request, cancellation), ""),
            CaseReading.Ratio => new(measured, TarpOverTop(runs), AirOf(measured)),
            _ => new(measured, Of(measured, [.. runs[measured.Id]]), AirOf(measured)),
        };

    private static string AirOf(MeasuredCase measured) => AssumedPiece.All.First(piece => piece.Id == measured.Id).Air.Describe();

    // A case of one mass a row names its piece in the part; any other is the mean over its pieces.
    private static Prediction Of(MeasuredCase measured, DryingRun[] runs)
    {
        var own = runs.Where(run => run.Case.Name == $"{measured.Id} {measured.Part}").ToArray();
        return Prediction.Mean([.. (own.Length > 0 ? own : runs).Select(run => RunReading.Of(measured, run))]);
    }

    private static Prediction TarpOverTop(ILookup<string, DryingRun> runs)
    {
        double Days(string id) => runs[id].Select(run => RunReading.DaysTo(run.Days, run.Typical.Mean, 0.20)).Single();
        return new(Days("V12") / Days("V11"));
    }

    private static Prediction Heating(IReadOnlyList<double> ratios) =>
        new(ratios.Median(), ratios.Quantile(0.1), ratios.Median(), ratios.Quantile(0.9));
}
