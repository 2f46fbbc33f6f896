using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Signs;

namespace Rickyard.Core.Learning.Inference;

/// <summary>A coarse sign.</summary>
/// <param name="Observation">Its place in the list.</param>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Core">Core, in the piece's numbering.</param>
/// <param name="Mean">Mean.</param>
/// <param name="Shell">Shell.</param>
/// <param name="End">End.</param>
/// <param name="Sign">Which.</param>
/// <param name="Seen">Whether it was there.</param>
internal sealed record SignTerm(int Observation, double Day, int Core, int Mean, int Shell, int End, WoodSign Sign, bool Seen) : Term(Observation, Day)
{
    /// <inheritdoc/>
    internal override TermChance Chance(in PiecePrediction prediction, ref Discrepancy discrepancy)
    {
        var log = SignLikelihood.LogChance(Sign, Seen, prediction.Value(Core), prediction.Value(Mean), prediction.Value(Shell), prediction.Value(End));
        return Event(Math.Exp(log), Math.Exp(log), 0);
    }

    /// <inheritdoc/>
    internal override Pull Plain(in PiecePrediction prediction, bool believed) => Pull.None;
}
