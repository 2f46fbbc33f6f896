namespace Rickyard.Core.Splits;

/// <summary>Cell edges along one coordinate: equal steps, or steps that grow geometrically away from bare faces.</summary>
public static class GridSpacing
{
    /// <summary>Equal steps.</summary>
    public static double[] Equal(double start, double end, int count) =>
        [.. Enumerable.Range(0, count + 1).Select(i => i == count ? end : start + (end - start) * i / count)];

    /// <summary>Steps growing inward from the ends marked fine, the finest as near to <paramref name="skin"/> as the growth limit allows.</summary>
    public static double[] Between(double start, double end, int count, bool fineAtStart, bool fineAtEnd, double skin, double growth)
    {
        if (!fineAtStart && !fineAtEnd) return Equal(start, end, count);
        if (fineAtStart && fineAtEnd) return FineAtBothEnds(start, end, count, skin, growth);
        var widths = Widths(end - start, count, skin, growth);
        if (fineAtEnd) Array.Reverse(widths);
        return Edges(start, end, widths);
    }

    /// <summary>
    /// Distance between two cells for which the difference of their means gives the slope at the face between them when the profile is a parabola about the
    /// coordinate's origin: what wood that dries evenly throughout shows across its half thickness or its radius (physics.md, G3). Between equal cells it is
    /// that of their centres. [the coordinate's unit]
    /// </summary>
    /// <param name="before">Where the first cell begins, 0 or more.</param>
    /// <param name="face">Where it meets the second.</param>
    /// <param name="after">Where the second ends; the face itself for the distance from a cell to the face that ends it.</param>
    /// <param name="round">Whether the coordinate is a radius.</param>
    public static double ParabolicDistance(double before, double face, double after, bool round) => (after - before) / 2
        * (round ? (before + after) / (2 * face) : (before + face + after) / (3 * face));

    private static double[] FineAtBothEnds(double start, double end, int count, double skin, double growth)
    {
        var half = Widths((end - start) / 2, (count + 1) / 2, skin, growth);
        return Edges(start, end, [.. half, .. half.Reverse()]);
    }

    /// <summary>Widths from the fine end: geometric with the ratio that makes the first one <paramref name="skin"/>, within 1 to growth.</summary>
    private static double[] Widths(double length, int count, double skin, double growth)
    {
        double low = 1, high = growth;
        for (var iteration = 0; iteration < 60; iteration++)
        {
            var ratio = (low + high) / 2;
            if (First(length, count, ratio) > skin) low = ratio; else high = ratio;
        }

        var first = First(length, count, high);
        return [.. Enumerable.Range(0, count).Select(i => first * Math.Pow(high, i))];
    }

    private static double First(double length, int count, double ratio) =>
        ratio - 1 < 1e-9 ? length / count : length * (ratio - 1) / (Math.Pow(ratio, count) - 1);

    private static double[] Edges(double start, double end, double[] widths)
    {
        var edges = new double[widths.Length + 1];
        edges[0] = start;
        for (var i = 0; i < widths.Length; i++) edges[i + 1] = edges[i] + widths[i];
        edges[^1] = end;
        return edges;
    }
}
