using Rickyard.Core.Learning;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>What damp air can give back to wood that is too dry, and by when.</summary>
internal static class OverDrySentence
{
    public static string? Of(LearningRun run)
    {
        if (run.OverDry is not { } dry) return null;
        var clock = new RunClock(run.Case, run.Days[^1]);
        var back = dry.BackOn is { } day
            ? $"as the forecast's air is, half of them are back in the band by {clock.Say(day)}"
            : $"the air of this run does not bring half of them back by {clock.Say(clock.End)}";
        return $"Too dry: {Say.Share(dry.ShareBelow)} of the splits have a core below {Say.Band(run.Window)} today. Air of {Say.Share(dry.HumidityNeeded)} relative humidity at the yard's present temperature would hold the middle of the band; {back}. "
            + "Damp air reaches the shell first and the core weeks later; do not wet the wood, and mix dry splits with moister ones meanwhile.";
    }
}
