using System.CommandLine;
using Rickyard.Commands;
using Rickyard.Core.Measuring.Ovens;

namespace Rickyard.Weigh;

/// <summary>Which of its questions <c>rickyard weigh</c> was asked.</summary>
/// <param name="parsed">The command line.</param>
/// <param name="reading">Keeps the problems.</param>
/// <param name="options">What may be typed.</param>
internal sealed class WeighQuestion(ParseResult parsed, OptionReading reading, WeighOptions options)
{
    /// <summary>The answer, or null with at least one problem kept.</summary>
    public WeighAnswer? Answer()
    {
        bool split = options.Tracking.Any(reading.Has), oven = reading.Has(options.Oven), microwave = reading.Has(options.Microwave), probe = reading.Has(options.Probe);
        AskWhich(new[] { split, oven, microwave, probe }.Count(asked => asked));
        if (reading.Has(options.Method) && !oven && !microwave) reading.Wrong(options.Method.Name, "A method was given, but no sample that is dried.", "Give the weighings with --oven or --microwave, or leave --method out.");
        if (reading.Has(options.Balance) && probe && !(split || oven || microwave)) reading.Wrong(options.Balance.Name, "Readings of a meter have no scale.", "Leave --balance out.");
        var answers = new List<WeighAnswer?>();
        if (split) answers.Add(new SplitQuestion(parsed, reading, options).Answer());
        if (oven) answers.Add(new OvenQuestion(parsed, reading, options, Appliance.Oven).Answer());
        if (microwave) answers.Add(new OvenQuestion(parsed, reading, options, Appliance.Microwave).Answer());
        if (probe) answers.Add(ProbeQuestion.Answer(parsed.GetValue(options.Probe) ?? "", options.Probe.Name, reading));
        return answers.FirstOrDefault();
    }

    private void AskWhich(int asked)
    {
        if (asked == 1) return;
        reading.Wrong(
            "weigh",
            asked == 0 ? "It is not said what is weighed." : "More than one thing is asked.",
            "Give one of: a marked split (--start-mass with --start-moisture or --section, and --mass or --target), a section alone (--section), --oven, --microwave, or --probe.");
    }
}
