namespace Rickyard.Core.Cases;

/// <summary>How many pieces there are and how their sizes differ.</summary>
/// <param name="Pieces">Number, or null for one split.</param>
/// <param name="SizeSpread">Relative standard deviation of the width.</param>
internal sealed record LotSection(int? Pieces, double SizeSpread)
{
    private const int UsualPieces = 100;
    private const double UsualSpread = 0.20;

    public static LotSection Read(CaseObject root, CaseFindings findings)
    {
        if (root.Group("lot", "pieces", "size spread") is not { } lot) return new(null, 0);
        if (!lot.Has("pieces")) findings.Assume("The number of pieces in the lot was not given: 100.");
        return new(
            lot.Count("pieces", 1, 1_000_000) ?? UsualPieces,
            lot.QuantityOr("size spread", CaseLimits.SizeSpread, UsualSpread, "How the sizes of the lot differ was not given: a standard deviation of 20 % of the width (judgement)."));
    }
}
