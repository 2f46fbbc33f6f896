using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>Translates a band by the species correction of pin meters, the wood as warm as the table of that correction supposes.</summary>
internal sealed class MeterBand : IMeterBand
{
    /// <inheritdoc/>
    public Result<CookBand> Translate(double low, double high, string scale, Species species)
    {
        var found = MeterScale.Find(scale, "--scale");
        if (!found.TryGet(out var meter)) return ResultOf.Failure<CookBand>(found.Problems);
        var (lower, upper) = (Correct(low, meter, species), Correct(high, meter, species));
        return lower.Verdict == MeterVerdict.Measured && upper.Verdict == MeterVerdict.Measured && lower.Moisture < upper.Moisture
            ? ResultOf.Success(new CookBand(lower.Moisture, upper.Moisture, meter.Name, low, high))
            : ResultOf.Failure<CookBand>(
                "--band", Invariant($"{100 * low:0.#} to {100 * high:0.#} on the {meter.Name} scale is not a moisture that a meter can tell in {species.CommonName}."),
                "Give a band that a meter can show, such as \"18-20 %\"; or leave --scale out and give moisture of the wood itself.");
    }

    private static CorrectedReading Correct(double shown, MeterScale meter, Species species) =>
        PinCorrection.Of(new(shown, ShownRange.Number, meter, TemperatureCorrection.TableCelsius), species);
}
