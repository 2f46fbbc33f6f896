namespace Rickyard.Core.Learning.Inference;

/// <summary>A weighing, by its logarithm.</summary>
/// <param name="Observation">Its place in the list.</param>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Mass">Mass as the engine says it, in the piece's numbering.</param>
/// <param name="DryMass">Oven-dry mass.</param>
/// <param name="LogValue">Logarithm of what was weighed. [ln kg]</param>
/// <param name="Own">Standard deviation of the weighing and of the stand-in, relative. [–]</param>
/// <param name="PieceSpread">Standard deviation of what a piece's mass has of its own. [–]</param>
/// <param name="IsDry">Whether the oven-dry mass was weighed.</param>
internal sealed record MassTerm(int Observation, double Day, int Mass, int DryMass, double LogValue, double Own, double PieceSpread, bool IsDry) : Term(Observation, Day)
{
    private const double FlatDensity = 1;

    /// <inheritdoc/>
    internal override TermChance Chance(in PiecePrediction prediction, ref Discrepancy discrepancy)
    {
        discrepancy.To(Day);
        var moisture = Math.Max(0, Math.Exp(prediction.Log(Mass) - prediction.Log(DryMass)) - 1);
        var slope = IsDry ? 0 : moisture / (1 + moisture);
        var expected = prediction.Log(IsDry ? DryMass : Mass) + slope * discrepancy.Mean + PieceSpread * prediction.PieceSize;
        return Number(LogValue, expected, slope * slope * discrepancy.Variance + Own * Own, slope, FlatDensity, ref discrepancy);
    }

    /// <inheritdoc/>
    internal override Pull Plain(in PiecePrediction prediction, bool believed)
    {
        var moisture = Math.Max(0, Math.Exp(prediction.Log(Mass) - prediction.Log(DryMass)) - 1);
        var slope = IsDry ? 0 : moisture / (1 + moisture);
        return NumberPull(LogValue, prediction.Log(IsDry ? DryMass : Mass) + PieceSpread * prediction.PieceSize, Own * Own, slope, FlatDensity, believed);
    }
}
