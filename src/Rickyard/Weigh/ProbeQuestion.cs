using System.Globalization;
using Rickyard.Commands;
using Rickyard.Core.Measuring.Sampling;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Weigh;

/// <summary>Readings of several splits, and how many it takes.</summary>
internal static class ProbeQuestion
{
    private const double Lowest = 2, Highest = 200;
    private const string Wanted = "Give one reading for each split in % dry basis, 2 to 200, two or more, such as \"18, 21, 25, 19, 22\".";

    public static WeighAnswer? Answer(string text, string field, OptionReading reading)
    {
        var words = text.Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(word => word != "%").ToList();
        var readings = new List<double>();
        foreach (var word in words)
        {
            if (double.TryParse(word.TrimEnd('%'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value is >= Lowest and <= Highest) readings.Add(value / 100);
            else reading.Wrong(field, $"{Echo.Of(word)} is not a reading.", Wanted);
        }

        if (readings.Count == words.Count && words.Count < 2) reading.Wrong(field, words.Count == 0 ? "There is no reading." : "One reading tells nothing of the others.", Wanted);
        return readings.Count == words.Count && words.Count >= 2 ? Of(new ProbedPieces(readings)) : null;
    }

    private static WeighAnswer Of(ProbedPieces probe)
    {
        int count = probe.Readings.Count, more = probe.Needed - count;
        return new(
            Invariant($"The {count} splits read {100 * probe.Mean:0.0} % dry basis on average, {100 * probe.Readings.Min():0.#} to {100 * probe.Wettest:0.#} %, with {100 * probe.Spread:0.0} points between them; the mean of the lot is within {100 * probe.HalfWidth:0.0} points of that, 9 times in 10."),
            more > 0
                ? Invariant($"Split and read {more} more: {probe.Needed} in all give the mean within 2 points, 9 times in 10.")
                : Invariant($"Judge the lot by its wettest, {100 * probe.Wettest:0.#} %: {count} splits are enough for the mean within 2 points, 9 times in 10 ({probe.Needed} needed)."),
            [
                "Take the splits from all over the stack, the largest and those from the shaded bottom among them, and read each in the same place of a face just split open.",
                "The count rests on the spread of these few; read the last of them and ask again.",
                "It is for the mean. The wettest of the lot is wetter than the wettest you read.",
            ])
        {
            Moisture = probe.Mean,
            Low = Math.Max(0, probe.Mean - probe.HalfWidth),
            High = probe.Mean + probe.HalfWidth,
            PiecesRead = count,
            Spread = probe.Spread,
            Wettest = probe.Wettest,
            PiecesNeeded = probe.Needed,
        };
    }
}
