using Rickyard.Core.Measuring.Weighing;
using static System.FormattableString;

namespace Rickyard.Weigh;

/// <summary>Sections alone, in words.</summary>
internal static class SectionSentences
{
    public static WeighAnswer Of(IReadOnlyList<MoistureSection> sections, StartMoisture start, MassUnit unit)
    {
        var wet = start.Moisture.PercentWet;
        var masses = string.Join("; ", sections.Select(section => $"{unit.Say(section.Wet)} as cut, {unit.Say(section.Dry)} oven-dry"));
        var sentence = sections.Count == 1
            ? Invariant($"The section held {start.Moisture} ({wet:0.0} % wet basis) when it was cut: {masses}.")
            : Invariant($"The {sections.Count} sections held {start.Moisture} ({wet:0.0} % wet basis) on average when they were cut: {masses}.");
        return new(
            sentence,
            "Weigh the rest of the piece at once, seal its ends, and ask again with --start-mass; from then on the scale alone tells its moisture.",
            [SplitSentences.Rests(start), "Cut sections 25 mm along the grain, over the full width and thickness, free of knots and bark, and weigh about 100 g to 0.05 g (Wengert, Drying Oak Lumber, step 3B and oven tests)."])
        {
            Moisture = start.Moisture.Fraction,
            Low = Math.Max(0, start.Moisture.Fraction - start.Error),
            High = start.Moisture.Fraction + start.Error,
        };
    }
}
