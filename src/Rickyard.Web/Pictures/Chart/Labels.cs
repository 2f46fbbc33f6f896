namespace Rickyard.Web.Pictures.Chart;

/// <summary>Labels beside one another on a line.</summary>
internal static class Labels
{
    /// <summary>Places as near as can be to those wished for, in the same order, none nearer to the next than a gap and none beyond a limit.</summary>
    /// <param name="wished">Places wished for.</param>
    /// <param name="gap">Least distance.</param>
    /// <param name="limit">Largest place.</param>
    public static double[] Spread(IReadOnlyList<double> wished, double gap, double limit)
    {
        var order = Enumerable.Range(0, wished.Count).OrderBy(i => wished[i]).ToArray();
        var places = wished.ToArray();
        for (var pass = 0; pass < 100; pass++)
        {
            for (var i = 1; i < order.Length; i++) Part(places, order[i - 1], order[i], gap);
            if (order.Length > 0) places[order[^1]] = Math.Min(places[order[^1]], limit);
        }

        for (var i = order.Length - 2; i >= 0; i--) places[order[i]] = Math.Min(places[order[i]], places[order[i + 1]] - gap);
        return places;
    }

    private static void Part(double[] places, int upper, int lower, double gap)
    {
        var missing = gap - (places[lower] - places[upper]);
        if (missing <= 0) return;
        places[upper] -= missing / 2;
        places[lower] += missing / 2;
    }
}
