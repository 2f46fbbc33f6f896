using Rickyard.Core.Boxes;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>What warmth wins, in plain words: vapour pressure and drying time side by side, and why they differ.</summary>
internal static class WarmthStory
{
    public static void Tell(WarmthQuestion question, WarmthGain gain, Screen screen)
    {
        screen.Paragraph(Answer(question, gain));
        screen.Gap();
        screen.Paragraph(Invariant($"{Capital(question.Split.Describe())}, from {100 * question.StartMoisture:0} to {100 * question.Target:0.#} % dry basis, air at {question.Speed:0.0#} m/s:"));
        screen.Table("lrrr", ["", Invariant($"{gain.From.Celsius:0.#} °C"), Invariant($"{gain.To.Celsius:0.#} °C"), "ratio"], Rows(gain));
        screen.Bullets(Why(gain));
    }

    /// <summary>Why the ratios are not one and the same.</summary>
    public static IEnumerable<string> Why(WarmthGain gain)
    {
        yield return Invariant($"Vapour pressure says how fast water leaves a wet face. Most of the time water is on its way inside the wood, where diffusion in cell walls rises {gain.BoundRatio:0.0}-fold")
            + (gain.FreeRatio is { } free ? Invariant($" and the flow of free water only {free:0.0}-fold") : "")
            + (gain.To.SurfaceShare is { } warm && gain.From.SurfaceShare is { } cool ? Invariant($"; the air film and bark hold {100 * cool:0} % of the drop in the cool air and {100 * warm:0} % in the warm, and a film hardly changes with warmth.") : ".");
        if (Math.Abs(gain.To.VaporPressure - gain.From.VaporPressure) < 1 && gain.From.Emc - gain.To.Emc > 0.01)
            yield return Invariant($"The two airs also end differently: wood would come to rest at {100 * gain.From.Emc:0.0} % in the cool air and {100 * gain.To.Emc:0.0} % in the warm, so the way to the target is steeper in the warm. With the humidity held the gain is smaller.");
        if (gain.KilnLaw is { } law)
            yield return Invariant($"The published law of red oak boards in kilns (Tschernitz and Simpson 1979), fitted for boards, says {law:0.0}-fold: the truth for your splits may lie anywhere between (judgement).");
    }

    private static string Answer(WarmthQuestion question, WarmthGain gain) => gain.CoreTimeRatio is { } core && gain.MeanTimeRatio is { } mean
        ? Invariant($"From {gain.From.Celsius:0.#} to {gain.To.Celsius:0.#} °C the vapour pressure over wet wood rises {gain.SaturationRatio:0.0}-fold and its distance from that of the air {gain.DeficitRatio:0.0}-fold; the core is at {100 * question.Target:0.#} % {core:0.0} times sooner and the mean {mean:0.0} times.")
        : Invariant($"In air of {Never(gain).Celsius:0.#} °C and {100 * Never(gain).RelativeHumidity:0} % relative humidity this split never comes to {100 * question.Target:0.#} % (it rests at {100 * Never(gain).Emc:0.0} % or takes over 20 years), so there is no ratio of times; vapour pressure rises {gain.SaturationRatio:0.0}-fold all the same.");

    private static WarmthSide Never(WarmthGain gain) => gain.From.DaysToCore is null ? gain.From : gain.To;

    private static IEnumerable<IReadOnlyList<string>> Rows(WarmthGain gain)
    {
        yield return Row("relative humidity, %", side => Invariant($"{100 * side.RelativeHumidity:0.0}"), gain, null);
        yield return Row("vapour pressure over wet wood, kPa", side => Invariant($"{side.SaturationPressure / 1000:0.00}"), gain, gain.SaturationRatio);
        yield return Row("less that of the air, kPa", side => Invariant($"{side.VaporDeficit / 1000:0.00}"), gain, gain.DeficitRatio);
        yield return Row("days until the core is there", side => Days(side.DaysToCore), gain, gain.CoreTimeRatio);
        yield return Row("days until the mean is there", side => Days(side.DaysToMean), gain, gain.MeanTimeRatio);
        yield return Row("mean when the core is there, %", side => side.MeanWhenCoreThere is { } mean ? Invariant($"{100 * mean:0.0}") : "–", gain, null);
    }

    private static IReadOnlyList<string> Row(string name, Func<WarmthSide, string> value, WarmthGain gain, double? ratio) =>
        [name, value(gain.From), value(gain.To), ratio is { } known ? Invariant($"{known:0.0}") : "–"];

    private static string Days(double? days) => days is { } known ? Invariant($"{known:0.0}") : "never";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
