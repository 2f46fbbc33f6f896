using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>Readings that can hardly be right: what was expected, and what to check.</summary>
internal static class SuspectSentences
{
    public static IReadOnlyList<string> Of(LearningRun run) => [.. run.Observations.Where(fit => fit.IsSuspect).Select(Sentence)];

    private static string Sentence(ObservationFit fit)
    {
        var from = fit.Observation.From;
        var value = fit.Value is { } number ? $" It says {Bound(fit.Observation)}{Number(number, fit.Unit)}; the others lead one to expect {Number(fit.Expected.Low, fit.Unit, false)} to {Number(fit.Expected.High, fit.Unit)} (9 in 10)." : "";
        return Invariant($"Line {from.Row}, {from.Words}: the chance that it is wrong is {100 * fit.ChanceWrong:0} %.{value} {Check(fit.Observation)}");
    }

    private static string Number(double value, string unit, bool withUnit = true) =>
        (unit == "kg" ? Invariant($"{value:0.00}") : Invariant($"{value:0.0}")) + (withUnit ? $" {unit}" : "");

    private static string Bound(Observation observation) => observation switch
    {
        PinObservation { Corrected.Verdict: MeterVerdict.AtLeast } => "at least ",
        PinObservation { Corrected.Verdict: MeterVerdict.AtMost } => "at most ",
        _ => "",
    };

    private static string Check(Observation observation) => observation switch
    {
        PinObservation { Pins.Place: PinPlace.FreshCore } => "Check the meter's scale, how warm the wood was, and that the pins were in the middle of a face just split.",
        PinObservation => "Check the meter's scale, how warm the wood was, and whether rain, dew or frost was on the face; then read it again on dry wood.",
        MassObservation or DryMassObservation => "Check the number on the piece, the unit, and that no snow, ice or lost bark was weighed; then weigh it again.",
        OvenObservation => "Check both masses, that drying went on until the mass stood still, and that the basis is dry; then dry another section.",
        PromiseObservation => "Ask the supplier how it was measured, where the pins were, and on which basis.",
        _ => "Look again, on several pieces.",
    };
}
