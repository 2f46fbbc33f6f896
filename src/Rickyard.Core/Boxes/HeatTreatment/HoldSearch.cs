namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>Finds the stretches in which the coldest core held a temperature (physics.md, T1).</summary>
public static class HoldSearch
{
    /// <summary>Longest time between readings within a hold: 5 min (state treatment protocol for T314; text), and half a second for clocks that round. [s]</summary>
    public const double LongestGap = 300.5;

    /// <summary>All stretches, in order of time.</summary>
    /// <param name="log">The log.</param>
    /// <param name="celsius">Temperature to hold. [°C]</param>
    /// <param name="margin">Taken off every reading. [K]</param>
    public static IReadOnlyList<HeatHold> All(CoreLog log, double celsius, double margin)
    {
        List<HeatHold> holds = [];
        int? first = null;
        for (var reading = 0; reading < log.Seconds.Length; reading++)
        {
            var gap = reading > 0 && log.Seconds[reading] - log.Seconds[reading - 1] > LongestGap;
            var holding = log.Coldest(reading) - margin >= celsius;
            if (first is { } from && (gap || !holding)) Close(from, reading - 1);
            if (first is null || gap || !holding) first = holding ? reading : null;
        }

        if (first is { } open) Close(open, log.Seconds.Length - 1);
        return holds;

        void Close(int from, int to) => holds.Add(new(from, to, log.Seconds[from], log.Seconds[to]));
    }
}
