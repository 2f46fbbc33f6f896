using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Draws pieces of a lot: any split of it, its middle one, or one that was observed.</summary>
internal sealed class PieceDrawer(LotUnknowns unknowns, double pieceSpread, bool isLot, int seed)
{
    private readonly Xoshiro256StarStar _random = new(seed);

    /// <summary>A split of the lot that nobody looked at; in a case of one piece that piece.</summary>
    internal DrawnPiece Any(LotDraw draw) => isLot || draw.Pieces.Length == 0 ? Fresh(draw) : Observed(draw, 0);

    /// <summary>The lot's middle split.</summary>
    internal DrawnPiece Middle(LotDraw draw) => new(Shared(draw), draw.Weather, 1, 1);

    /// <summary>A split that was observed.</summary>
    internal DrawnPiece Observed(LotDraw draw, int piece)
    {
        var (numbers, size, discrepancy) = draw.Pieces[piece];
        return new(numbers, draw.Weather, 1 + Normal.Sample(_random, discrepancy.Mean, Math.Sqrt(discrepancy.Variance)), Math.Exp(pieceSpread * size));
    }

    /// <summary>A standard normal number.</summary>
    internal double Normally() => Normal.Sample(_random, 0, 1);

    private DrawnPiece Fresh(LotDraw draw)
    {
        var numbers = Shared(draw);
        foreach (var k in unknowns.PieceOwn) numbers[k] += unknowns.PieceShare[k] * draw.PieceFactor * Normally();
        return new(numbers, draw.Weather, 1 + Discrepancy.Spread * Normally(), Math.Exp(pieceSpread * Normally()));
    }

    private double[] Shared(LotDraw draw) => [.. draw.Unknowns.Select((number, k) => unknowns.LotShare[k] * number)];
}
