namespace Rickyard.Core.Weather;

/// <summary>
/// The stated rules for holes: up to 6 hours along a straight line; up to 72 hours from the same hour of the days before and after, nearer
/// ones weighing more; longer ones stay open.
/// </summary>
internal static class GapFilling
{
    /// <summary>Longest gap filled along a straight line. [h]</summary>
    public const int StraightHours = 6;

    /// <summary>Longest gap filled from neighbouring days. [h]</summary>
    public const int NeighbourHours = 72;

    /// <summary>Largest share of a series that may be filled.</summary>
    public const double LargestShare = 0.1;

    /// <summary>Fills a series in place.</summary>
    public static GapReport Fill(double?[] values)
    {
        double?[] known = [.. values];
        int straight = 0, neighbours = 0, openFrom = -1, openLength = 0;
        foreach (var (from, length) in Gaps(known))
        {
            if (length <= StraightHours && from > 0 && from + length < known.Length)
            {
                Straight(values, from, length);
                straight += length;
            }
            else if (length <= NeighbourHours && Neighbours(known, values, from, length))
            {
                neighbours += length;
            }
            else if (openFrom < 0)
            {
                (openFrom, openLength) = (from, length);
            }
        }

        return new(straight, neighbours, openFrom, openLength);
    }

    /// <summary>Joins the rows of a coarser step by straight lines; longer holes stay open.</summary>
    /// <param name="values">Filled in place.</param>
    /// <param name="step">Hours from row to row.</param>
    public static void Join(double?[] values, int step)
    {
        foreach (var (from, length) in Gaps([.. values]))
        {
            if (length < step && from > 0 && from + length < values.Length) Straight(values, from, length);
        }
    }

    private static IEnumerable<(int From, int Length)> Gaps(double?[] values)
    {
        for (var from = 0; from < values.Length; from++)
        {
            if (values[from] is not null) continue;
            var end = from;
            while (end < values.Length && values[end] is null) end++;
            yield return (from, end - from);
            from = end;
        }
    }

    private static void Straight(double?[] values, int from, int length)
    {
        double before = values[from - 1]!.Value, after = values[from + length]!.Value;
        for (var i = 0; i < length; i++) values[from + i] = before + (after - before) * (i + 1) / (length + 1);
    }

    private static bool Neighbours(double?[] known, double?[] values, int from, int length)
    {
        var filled = Enumerable.Range(from, length).Select(hour => FromDays(known, hour)).ToArray();
        if (filled.Any(value => value is null)) return false;
        filled.CopyTo(values, from);
        return true;
    }

    private static double? FromDays(double?[] known, int hour)
    {
        var (before, after) = (Nearest(known, hour, -24), Nearest(known, hour, 24));
        if (before is not { } left) return after?.Value;
        if (after is not { } right) return left.Value;
        return (left.Value * right.Days + right.Value * left.Days) / (left.Days + right.Days);
    }

    private static (double Value, int Days)? Nearest(double?[] known, int hour, int step)
    {
        for (var days = 1; days <= NeighbourHours / 24 + 1; days++)
        {
            var other = hour + days * step;
            if (other < 0 || other >= known.Length) return null;
            if (known[other] is { } value) return (value, days);
        }

        return null;
    }
}
