using Rickyard.Core.Planning;
using Rickyard.Dry;
using Rickyard.Web.Pictures.Sizes;
using static System.FormattableString;

namespace Rickyard.SplitSize;

/// <summary>The answer in its first sentence, and what stands beside it.</summary>
internal sealed class SizeSentences(SizeAnswer answer)
{
    private readonly RunClock _clock = new(answer.Run);

    /// <summary>"by 1 May 2027".</summary>
    public string By => $"by {_clock.Say(answer.Request.NeededDays)}";

    private string Odds => WidthWords.Odds(answer.Request.Confidence);

    private string Dry => Invariant($"at or below {100 * answer.Request.BandHigh:0.#} % dry basis");

    /// <summary>How wide to split.</summary>
    public string Answer => answer switch
    {
        { Largest: null } => None,
        { LargestPasses: true } => $"Any split up to {WidthWords.Both(SizeSteps.Largest)} across, the widest tried, has at least {Odds} cores {Dry} {By}.",
        { Largest: { } width } => $"Split no wider than {WidthWords.Both(width)} across to have {Odds} cores {Dry} {By}.",
    };

    /// <summary>The size as the case has it, where it was among those tried.</summary>
    public string? Own => answer.Trials.FirstOrDefault(trial => Math.Abs(trial.Width - SplitWidth.Across(answer.Case.Split)) <= 0.0026) is { } own && own.Width != answer.Largest
        ? $"Splits as wide as the case has them, about {WidthWords.Both(own.Width)}, are ready by then with a chance of {Say.Share(own.ChanceBy(answer.Request.NeededDays))}{Later(own)}."
        : null;

    /// <summary>What that size is like on the day.</summary>
    public string OnTheDay
    {
        get
        {
            string At(double[] values) => Say.Percent(Curve.At(answer.Run.Days, values, answer.Request.NeededDays));
            var (run, width) = (answer.Run, WidthWords.Both(answer.Largest ?? SizeSteps.Smallest));
            return $"On {_clock.Say(answer.Request.NeededDays)} the typical split of {width} has a core of {At(run.Typical.Core)}, a shell of {At(run.Typical.Shell)} and a mean of {At(run.Typical.Mean)} % dry basis; 8 chances in 10 for its core: {At(run.LowTenth.Core)} to {At(run.HighTenth.Core)}.";
        }
    }

    /// <summary>First day by which the part asked for is ready.</summary>
    public string ReadyBy(SizeTrial trial) => trial.DayOf(answer.Request.Confidence) is { } day ? _clock.Say(day) : $"after {_clock.Say(_clock.End)}";

    private string Later(SizeTrial trial) => trial.DayOf(answer.Request.Confidence) is { } day ? $"; {Odds} of them are by {_clock.Say(day)}" : "";

    private string None
    {
        get
        {
            var smallest = answer.Trials[0];
            var later = smallest.DayOf(answer.Request.Confidence) is { } day ? $" {Odds} of them are by {_clock.Say(day)}." : " Give it longer, drier or warmer air, or start with drier wood.";
            return $"No split from {WidthWords.Both(SizeSteps.Smallest)} up has {Odds} cores {Dry} {By}: at that width the chance is {Say.Share(smallest.ChanceBy(answer.Request.NeededDays))}.{later}";
        }
    }
}
