namespace Rickyard.Core.Learning.Outlook;

/// <summary>
/// What a reading would be worth: the draws are sorted by what it would show, and within slices of like values the ready day is as sure as it would be after that reading
/// (the idea of Strong, Oakley and Brennan 2014, Medical Decision Making 34: 311, from memory, with slices in place of a regression; physics.md, L9).
/// </summary>
internal static class ReadingGains
{
    private const int Slices = 16;

    /// <summary>Gains, the largest first.</summary>
    /// <param name="choices">Readings.</param>
    /// <param name="days">Ready day of each draw. [d]</param>
    internal static IReadOnlyList<ReadingGain> Of(IEnumerable<ReadingChoice> choices, double[] days)
    {
        var now = Width(days);
        return [.. choices.Select(choice => new ReadingGain(choice.Words, choice.Pins, choice.Piece, choice.GivesUpPiece, now, Math.Min(now, After(choice.Value, days))))
            .OrderByDescending(gain => gain.DaysGained).ThenBy(gain => gain.GivesUpPiece)];
    }

    private static double After(double[] values, double[] days)
    {
        var order = Enumerable.Range(0, days.Length).OrderBy(i => values[i]).ToArray();
        return Enumerable.Range(0, Slices).Average(slice =>
            Width([.. order[(slice * order.Length / Slices)..((slice + 1) * order.Length / Slices)].Select(i => days[i])]));
    }

    private static double Width(double[] days)
    {
        var spread = Quantiles.Of(days);
        return spread.High - spread.Low;
    }
}
