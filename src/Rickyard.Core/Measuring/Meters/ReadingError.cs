namespace Rickyard.Core.Measuring.Meters;

/// <summary>What differs from one reading to the next on wood of one moisture (physics.md, P7).</summary>
public static class ReadingError
{
    /// <summary>Pins in pieces of equal moisture: 0.3 points (Wengert, text). [kg kg⁻¹]</summary>
    private const double OfPins = 0.003;

    /// <summary>A display to whole percent is off by up to half a point either way, evenly. [kg kg⁻¹]</summary>
    private const double OfWholePercent = 0.0029;

    /// <summary>How one spot differs from the next in wood that dries out of doors; judgement. [kg kg⁻¹]</summary>
    private const double OfSpot = 0.007;

    /// <summary>A shift of depth by a millimetre or two, where moisture changes fast under the face; judgement. [kg kg⁻¹]</summary>
    private const double OfDepth = 0.006;

    /// <summary>Frozen wood: ice does not conduct and may hide water (James 1988, from memory); judgement of its size. [kg kg⁻¹]</summary>
    private const double OfFrost = 0.03;

    /// <summary>Standard deviation. [kg kg⁻¹]</summary>
    public static double Of(PinReading reading, PinPlace? place, double celsius)
    {
        var isWhole = Math.Abs(100 * reading.Shown - Math.Round(100 * reading.Shown)) < 1e-6;
        double[] parts = [OfPins, OfSpot, isWhole ? OfWholePercent : 0, place is null or PinPlace.FreshCore ? 0 : OfDepth, celsius < 0 ? OfFrost : 0];
        return Math.Sqrt(parts.Sum(part => part * part));
    }
}
