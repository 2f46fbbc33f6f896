namespace Rickyard.Core.Verification;

/// <summary>A measured case beside what the engine says of it.</summary>
/// <param name="Case">What was measured.</param>
/// <param name="Predicted">What the engine says.</param>
/// <param name="Air">The air taken, in words; empty where the case itself states it.</param>
public sealed record VerificationRow(MeasuredCase Case, Prediction Predicted, string Air)
{
    /// <summary>Distance of the typical piece from the measured range, 0 inside. [unit of the case]</summary>
    public double MissFromRange => Case.FromRange(Predicted.Typical);

    /// <summary>Distance of the typical piece from the measured middle. [unit of the case]</summary>
    public double MissFromMiddle => Case.FromMiddle(Predicted.Typical);

    /// <summary>The first over the measured middle, or the bound. [–]</summary>
    public double RelativeMissFromRange => MissFromRange / (Case.Middle ?? Case.High);

    /// <summary>The second over the measured middle, or the bound. [–]</summary>
    public double RelativeMissFromMiddle => MissFromMiddle / (Case.Middle ?? Case.High);
}
