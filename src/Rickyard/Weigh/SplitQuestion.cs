using System.CommandLine;
using Rickyard.Commands;
using Rickyard.Core.Measuring.Weighing;
using Rickyard.Core.Quantities;

namespace Rickyard.Weigh;

/// <summary>A marked split that is weighed again, or only a section of one.</summary>
/// <param name="parsed">The command line.</param>
/// <param name="reading">Keeps the problems.</param>
/// <param name="options">What may be typed.</param>
internal sealed class SplitQuestion(ParseResult parsed, OptionReading reading, WeighOptions options)
{
    /// <summary>The answer, or null with at least one problem kept.</summary>
    public WeighAnswer? Answer()
    {
        var sections = Texts(options.Section).Select(Section).OfType<MoistureSection>().ToList();
        var assumed = reading.Quantity(options.StartMoisture, WeighOptions.Green);
        var start = reading.Quantity(options.StartMass, WeighOptions.Weight);
        var masses = Masses();
        var target = reading.Quantity(options.Target, WeighOptions.Wanted);
        var step = reading.Quantity(options.Balance, WeighOptions.Step);
        AskParts();
        if (reading.Problems.Count > 0) return null;
        var moisture = sections.Count > 0 ? StartMoisture.FromSections(sections) : StartMoisture.Assumed(MoistureContent.FromFraction(assumed!.Value));
        if (start is not { } kilograms) return SectionSentences.Of(sections, moisture, MassUnit.Of(Texts(options.Section).SelectMany(text => text.Split('>'))));
        var split = new MarkedSplit(Mass.FromKilograms(kilograms), moisture);
        Ask(split, masses, target);
        if (reading.Problems.Count > 0) return null;
        string[] texts = [parsed.GetValue(options.StartMass)!, .. Texts(options.Mass)];
        var unit = MassUnit.Of(texts);
        var typed = MassUnit.Of([texts[0], texts[^1]]).CoarsestStep;
        return new SplitSentences(split, masses.Count > 0 ? masses[^1] : null, target is { } wanted ? MoistureContent.FromFraction(wanted) : null, step ?? typed, unit).Answer();
    }

    private string[] Texts(Option<string[]> option) => parsed.GetValue(option) ?? [];

    private List<Mass> Masses()
    {
        List<Mass> masses = [];
        foreach (var text in Texts(options.Mass))
        {
            if (WeighOptions.Weight.TryRead(text, options.Mass.Name, out var kilograms, out var problem)) masses.Add(Mass.FromKilograms(kilograms));
            else reading.Wrong(problem);
        }

        return masses;
    }

    private MoistureSection? Section(string text)
    {
        var field = options.Section.Name;
        if (text.Split('>') is not [var before, var after])
        {
            reading.Wrong(field, $"{Echo.Of(text)} is not a section.", "Give its mass as cut, then >, then its oven-dry mass, such as \"98.55 g > 59.20 g\".");
            return null;
        }

        var hasWet = WeighOptions.Weight.TryRead(before, field, out var wet, out var wrongWet);
        var hasDry = WeighOptions.Weight.TryRead(after, field, out var dry, out var wrongDry);
        if (wrongWet is not null) reading.Wrong(wrongWet);
        if (wrongDry is not null) reading.Wrong(wrongDry);
        if (!hasWet || !hasDry) return null;
        var section = MoistureSection.Make(Mass.FromKilograms(wet), Mass.FromKilograms(dry), field);
        foreach (var problem in section.Problems) reading.Wrong(problem);
        return section.Value;
    }

    private void AskParts()
    {
        bool section = reading.Has(options.Section), assumed = reading.Has(options.StartMoisture);
        var later = reading.Has(options.Mass) || reading.Has(options.Target);
        if (section && assumed) reading.Wrong(options.StartMoisture.Name, "The start moisture is given twice, by a section and as a number.", "Keep --section, which is measured, and leave --start-moisture out.");
        if (!section && !assumed) reading.Wrong(options.StartMoisture.Name, "Nothing tells the moisture at the start.", "Give --section \"98.55 g > 59.20 g\", or an assumed --start-moisture such as \"70 % dry basis\".");
        if (!reading.Has(options.StartMass) && (later || !section)) reading.Wrong(options.StartMass.Name, "It is missing: what the split weighed when its moisture was so.", WeighOptions.Weight.Wanted);
    }

    private void Ask(MarkedSplit split, List<Mass> masses, double? target)
    {
        foreach (var problem in split.Problems(masses, options.Mass.Name)) reading.Wrong(problem);
        if (target >= split.Start.Moisture.Fraction)
            reading.Wrong(options.Target.Name, $"The split started at {split.Start.Moisture}, so this is passed already.", $"Give less than {split.Start.Moisture}.");
    }
}
