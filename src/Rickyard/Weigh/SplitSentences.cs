using Rickyard.Core.Measuring.Weighing;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Weigh;

/// <summary>A marked split in words.</summary>
/// <param name="split">What it started from.</param>
/// <param name="now">Latest mass, no problem with it; null where it was not weighed again.</param>
/// <param name="target">Moisture to pull it at, below the start.</param>
/// <param name="step">Smallest step of the scale. [kg]</param>
/// <param name="unit">What the masses were typed in.</param>
internal sealed class SplitSentences(MarkedSplit split, Mass? now, MoistureContent? target, double step, MassUnit unit)
{
    private double? Moisture => now is { } mass ? split.MoistureAt(mass) : null;

    private double? Error => now is { } mass ? split.Error(mass, step) : null;

    /// <summary>What the start moisture rests on.</summary>
    public static string Rests(StartMoisture start)
    {
        var points = Invariant($"±{100 * start.Error:0.0} points (judgement)");
        return start.Sections switch
        {
            0 => $"Start moisture: {start.Moisture}, assumed; trees of one wood differ by about a fifth, {points}. A section cut from an end and dried narrows that to a few points.",
            1 => $"Start moisture: {start.Moisture} from one section, {points}, for one end is not the other. A second from the other end narrows it.",
            _ => $"Start moisture: {start.Moisture} from {start.Sections} sections, {points}: half of what lies between them, at least one.",
        };
    }

    public WeighAnswer Answer() => new(Sentence(), Next(), [.. Notes()])
    {
        Moisture = Moisture,
        Low = Moisture - Error is { } low ? Math.Max(0, low) : null,
        High = Moisture + Error,
        OvenDry = split.OvenDry,
        TargetMass = target is { } wanted ? split.MassAt(wanted) : null,
        TargetRange = target is { } reached ? split.MassRange(reached) : null,
    };

    private string Sentence()
    {
        if (now is not { } mass) return $"The split held {unit.Say(split.OvenDry)} of wood and {unit.Say(split.StartMass.Kilograms - split.OvenDry.Kilograms)} of water when it weighed {unit.Say(split.StartMass)}.";
        var content = MoistureContent.FromFraction(Math.Max(0, split.MoistureAt(mass)));
        return Invariant($"The split is at {content} ({content.PercentWet:0.0} % wet basis) on average: {unit.Say(mass)} now, {unit.Say(split.OvenDry)} of it wood; it may be anywhere from {100 * Math.Max(0, Moisture!.Value - Error!.Value):0.0} to {100 * (Moisture.Value + Error.Value):0.0} %.");
    }

    private string Next()
    {
        if (target is not { } wanted) return "Weigh it again in a week, dry outside and at the same hour; add --target to hear the mass to pull it at.";
        var mass = split.MassAt(wanted);
        if (now is not { } present) return $"Pull it at {unit.Say(mass)}: that is {wanted}.";
        if (present.Kilograms <= mass.Kilograms) return $"Pull it now: {wanted} was reached at {unit.Say(mass)}. Split one open and read its core before you burn the rest.";
        return $"Pull it at {unit.Say(mass)}: that is {wanted}, and {unit.Say(present.Kilograms - mass.Kilograms)} of water must still go.";
    }

    private IEnumerable<string> Notes()
    {
        yield return Rests(split.Start);
        if (now is { } mass)
        {
            yield return Invariant($"Now that counts for ±{100 * split.ErrorFromStart(mass, split.Start.Error):0.0} points, and the scale, {unit.SaySmall(step)} a step (--balance sets it), for ±{100 * split.ErrorFromScale(mass, step):0.0}.");
        }

        if (target is { } wanted)
        {
            var (lightest, heaviest) = split.MassRange(wanted);
            yield return $"Were the start moisture off as far as that, {wanted} would come between {unit.Say(lightest)} and {unit.Say(heaviest)}.";
        }

        yield return "Mass tells the mean of the whole piece; its core is wetter for as long as it dries.";
        yield return "Lost bark, rain, snow and mud change the mass too: brush it off, and at the end cut a section from the middle to set the oven-dry mass right (AH-188 ch. 6, from memory).";
    }
}
