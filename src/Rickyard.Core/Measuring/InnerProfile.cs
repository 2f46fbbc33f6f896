namespace Rickyard.Core.Measuring;

/// <summary>What is inside a piece that reads so at one or two places and dries in steady air. All are moistures but the last two. [kg kg⁻¹]</summary>
/// <param name="Core">Inner tenth.</param>
/// <param name="Mean">Whole piece.</param>
/// <param name="Shell">Outer 6 mm under bare faces.</param>
/// <param name="End">Outer 6 mm of end grain.</param>
/// <param name="FreshCore">What bare pins would show in a face just split open.</param>
/// <param name="SplitFace">What they would show in the weathered split face.</param>
/// <param name="EndGrain">What they would show in the end.</param>
/// <param name="Days">How long such a piece takes there from green, at 20 °C. [d]</param>
/// <param name="Misfit">Root mean square of what was read less what the profile reads at those places; near 0 for one reading. [kg kg⁻¹]</param>
public sealed record InnerProfile(
    double Core, double Mean, double Shell, double End, double FreshCore, double SplitFace, double EndGrain, double Days, double Misfit)
{
    /// <summary>The inside in words.</summary>
    public string Describe() => FormattableString.Invariant(
        $"core about {100 * Core:0} %, outer 6 mm {100 * Shell:0} %, whole piece {100 * Mean:0} %; pins would show {100 * EndGrain:0} % in the end, {100 * SplitFace:0} % in the split face and {100 * FreshCore:0} % in a fresh core");
}
