using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Changes;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>What single changes would win, in words.</summary>
internal static class ChangeSentences
{
    /// <summary>A change that wins less than this is told as winning next to nothing.</summary>
    private const double NextToNothing = 0.03;

    private const int Told = 4;

    /// <summary>The best changes first; empty where none was tried.</summary>
    public static IReadOnlyList<string> Of(ChargeRun charge)
    {
        var winning = charge.Changes.Where(gain => gain.TimeShare < 1 - NextToNothing).Take(Told).Select(gain => Invariant($"{Words(gain.Change)}: {100 * gain.TimeShare:0} % of the time.")).ToList();
        var idle = charge.Changes.Where(gain => gain.TimeShare >= 1 - NextToNothing).Select(gain => Words(gain.Change)).ToList();
        if (idle.Count > 0) winning.Add($"Next to nothing, or worse: {string.Join("; ", idle)}.");
        return winning;
    }

    /// <summary>A change in words.</summary>
    public static string Words(BoxChange change) => change switch
    {
        BoxChange.StrongerHeater => "half as much heater power again",
        BoxChange.BetterWalls => "walls that let half as much heat through",
        BoxChange.LargerVent => "a vent of twice the size",
        BoxChange.FasterFan => "air twice as fast at the wood",
        BoxChange.LooserPacking => "splits laid so that air reaches every face",
        BoxChange.Warmer => "a setting 6 K higher",
        BoxChange.FinerSplits => "every split cut in two (seven tenths as wide)",
        _ => "half as many splits at once",
    };
}
