using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning;

/// <summary>A case made ready for learning: what it states firmly is doubted as much as people's statements deserve.</summary>
internal static class LearningCase
{
    /// <summary>A stated start moisture is believed to a tenth (judgement: above fibre saturation no pocket meter can tell).</summary>
    private const double StatedStartSpread = 0.10;

    /// <summary>Size spread of a lot that was described as one split while several were observed; judgement.</summary>
    private const double UsualSizeSpread = 0.20;

    /// <summary>The case as it is learnt with.</summary>
    internal static DryingCase Of(DryingCase drying, IReadOnlyList<Observation> observations)
    {
        var seen = observations.Select(one => one.From.Piece).Distinct().Count();
        var lot = drying.Pieces is null or 1 && seen > 1 ? drying with { Pieces = seen, SizeSpread = UsualSizeSpread } : drying;
        return lot.Start.IsGreen || lot.StartSpread is not null ? lot : lot with { StartSpread = StartSpread(lot) };
    }

    /// <summary>Whether it is of several pieces.</summary>
    internal static bool IsLot(DryingCase drying) => drying.Pieces > 1;

    private static double StartSpread(DryingCase drying) => IsLot(drying)
        ? Math.Sqrt(StatedStartSpread * StatedStartSpread + MemberWood.StartSpreadOfLot * MemberWood.StartSpreadOfLot)
        : StatedStartSpread;
}
