namespace Rickyard.Dry;

/// <summary>Reads a curve between its reports.</summary>
internal static class Curve
{
    /// <summary>The value at a day, straight between reports, held outside them.</summary>
    /// <param name="days">Report times, rising. [d]</param>
    /// <param name="values">Values there.</param>
    /// <param name="day">The day asked for. [d]</param>
    public static double At(double[] days, double[] values, double day)
    {
        if (day <= days[0]) return values[0];
        if (day >= days[^1]) return values[^1];
        var found = Array.BinarySearch(days, day);
        if (found >= 0) return values[found];
        var next = ~found;
        var part = (day - days[next - 1]) / (days[next] - days[next - 1]);
        return values[next - 1] + part * (values[next] - values[next - 1]);
    }
}
