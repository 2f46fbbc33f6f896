namespace Rickyard.Core.Boxes;

/// <summary>Zero of a rising function within a bracket: false position with the Illinois rule (Dowell and Jarratt 1971), which no kink of a thermostat upsets.</summary>
internal static class Bracketed
{
    private const int MostRounds = 80;

    /// <summary>The zero, or the end of the bracket nearer to it.</summary>
    /// <param name="low">[x]</param>
    /// <param name="high">[x]</param>
    /// <param name="tolerance">Width at which to stop. [x]</param>
    /// <param name="function">Rising.</param>
    internal static double Zero<T>(double low, double high, double tolerance, in T function)
        where T : struct, IRising
    {
        double atLow = function.At(low), atHigh = function.At(high);
        if (atLow >= 0) return low;
        if (atHigh <= 0) return high;
        var side = 0;
        for (var round = 0; round < MostRounds && high - low > tolerance; round++)
        {
            var middle = (low * atHigh - high * atLow) / (atHigh - atLow);
            if (!(middle > low && middle < high)) middle = (low + high) / 2;
            var value = function.At(middle);
            if (value == 0) return middle;
            if (value < 0) (low, atLow, atHigh, side) = (middle, value, side < 0 ? atHigh / 2 : atHigh, -1);
            else (high, atHigh, atLow, side) = (middle, value, side > 0 ? atLow / 2 : atLow, 1);
            if (Math.Min(middle - low, high - middle) == 0 && Math.Abs(value) < 1e-300) return middle;
        }

        return Math.Abs(atLow) < Math.Abs(atHigh) ? low : high;
    }
}
