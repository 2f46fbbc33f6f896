using Rickyard.Core.Drying;
using Rickyard.Core.Learning;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>The answer in its first sentence: when the wood is ready inside and until when, and what the readings changed.</summary>
internal sealed class AnswerSentences(LearningRun run)
{
    private const string Odds = "8 chances in 10";
    private const double SureOfIt = 0.995;

    private readonly RunClock _clock = new(run.Case, run.Days[^1]);

    private string Subject => run.Case.Pieces > 1 ? "A split of this lot" : "The piece";

    private string Band => Say.Band(run.Window);

    private double CoreNow => Curve.At(run.Days, run.Median.Core, run.Today);

    /// <summary>When it is ready and until when.</summary>
    public string Answer => run switch
    {
        _ when CoreNow < run.Window.BandLow => TooDry,
        { Window.From.Middle: null } => NotReady,
        { Window.From.Middle: { } from } when from <= run.Today => $"{Subject} is ready inside now, its core in {Band} since about {_clock.Say(from)} (8 in 10: {_clock.Between(run.Window.From.Early, run.Window.From.Late)}), {Until}.",
        { Window.From: var from } => $"{Subject} is ready inside, its core in {Band}, from {_clock.Say(from.Middle!.Value)} ({Odds}: {_clock.Between(from.Early, from.Late)}), {Until}.{Chance}",
    };

    /// <summary>The same day before any reading and now, and what is left to the lot itself.</summary>
    public string Change
    {
        get
        {
            var count = run.Observations.Count == 1 ? "reading" : $"{run.Observations.Count} readings";
            var (before, now) = run.Case.Pieces > 1 ? (run.LotWindowBefore.From, run.LotWindow.From) : (run.WindowBefore.From, run.Window.From);
            var subject = run.Case.Pieces > 1 ? "Ready day of the lot's middle split" : "Ready day";
            return $"{subject} before the {count}: {Span(before)}; now: {Span(now)}.{Taken(before, now)}{Differ}";
        }
    }

    private string Until => run.Window.Until.Middle is { } until
        ? $"at its best until {_clock.Say(until)} (8 in 10: {_clock.Between(run.Window.Until.Early, run.Window.Until.Late)}); after that it is drier than you like"
        : $"and still is when the run ends on {_clock.Say(_clock.End)}";

    private string Chance => run.Window.ChanceReady > SureOfIt ? "" : $" The chance that it gets there within the run is {Say.Share(run.Window.ChanceReady)}.";

    private string NotReady => $"{Subject} is not ready within this run: on {_clock.Say(_clock.End)} its core is still at {Say.Moisture(run.Median.Core[^1])} "
        + $"({Odds}: {Say.Percent(run.LowTenth.Core[^1])} to {Say.Percent(run.HighTenth.Core[^1])} % dry basis), above {Band}. The chance that it gets there sooner is {Say.Share(run.Window.ChanceReady)}.";

    private string TooDry => $"{Subject} is drier inside than {Band} already: its core is at {Say.Moisture(CoreNow)} today "
        + $"({Odds}: {Say.Percent(Curve.At(run.Days, run.LowTenth.Core, run.Today))} to {Say.Percent(Curve.At(run.Days, run.HighTenth.Core, run.Today))} % dry basis){Left}.";

    private string Left => run.Window.Until.Middle is { } until ? $", and fell below the band about {_clock.Say(until)}" : "";

    private static string Taken(DaySpread before, DaySpread now) => Width(now) is { } left && Width(before) is { } was
        ? Invariant($" The 8-in-10 range was {was:0} days wide and is {left:0}.") + (left > 0.95 * was ? " So these readings made it no surer; what was learnt below may say why." : "")
        : "";

    private string Differ => run.Case.Pieces > 1 ? " The rest of the range above is what its splits differ by." : "";

    private static double? Width(DaySpread spread) => spread.Late - spread.Early;

    private string Span(DaySpread spread) => spread.Early is null ? $"not by {_clock.Say(_clock.End)}" : _clock.Between(spread.Early, spread.Late);
}
