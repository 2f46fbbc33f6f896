using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Forecasting;

/// <summary>One member of a case made real: its size, its wood, its start moisture (physics.md, E1 to E7 give each spread and its source).</summary>
/// <param name="Split">Its size.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="StartFactor">Its start moisture over the case's.</param>
internal sealed record MemberWood(Split Split, LaneWood Wood, double StartFactor)
{
    /// <summary>Spread of start moisture among pieces of a lot, of its value: about what boards from several logs show (Wood Handbook text: "considerable"; judgement).</summary>
    internal const double StartSpreadOfLot = 0.08;

    /// <summary>Spread of width where the size is a guess from the mass.</summary>
    private const double GuessedSizeSpread = 0.10;

    /// <summary>Half the distance between the drying and the wetting branch of the isotherm, ±11 % about the table, taken as two standard deviations.</summary>
    internal const double SorptionSpread = 0.055;

    /// <summary>The member a draw stands for.</summary>
    internal static MemberWood Of(DryingCase drying, MemberDraw draw)
    {
        var species = drying.Species;
        var density = drying.BasicDensity * (IsOwnDensity(drying) ? 1 : Math.Exp(species.BasicDensitySpread * draw.Density));
        var rate = drying.RateFactor ?? Math.Exp(species.RateFactor.MeanLog + species.RateFactor.SpreadLog * draw.Rate);
        var sizeSpread = SizeSpreadOf(drying);
        var wood = new LaneWood(
            density,
            rate,
            Math.Exp(WaterMobility.FreeWaterSpreadLog * draw.FreeWater),
            LaneWood.UsualBarkConductance * Math.Exp(LaneWood.BarkSpreadLog * draw.Bark),
            Math.Exp(SorptionSpread * draw.Sorption));
        var split = sizeSpread > 0 ? drying.Split.ScaledAcross(Math.Exp(sizeSpread * draw.Size)) : drying.Split;
        return new(split, wood, StartOf(drying, draw, density));
    }

    /// <summary>Relative standard deviation of the start moisture.</summary>
    internal static double StartSpreadOf(DryingCase drying) => drying.StartSpread
        ?? (drying.Start.IsGreen ? drying.Species.GreenMoisture.Spread / drying.Start.Core : drying.Pieces > 1 ? StartSpreadOfLot : 0);

    /// <summary>Relative standard deviation of the width.</summary>
    internal static double SizeSpreadOf(DryingCase drying) => drying.SizeSpread > 0 ? drying.SizeSpread : drying.Split.Guess is null ? 0 : GuessedSizeSpread;

    /// <summary>Whether the case gives its own density.</summary>
    internal static bool IsOwnDensity(DryingCase drying) =>
        Math.Abs(drying.BasicDensity - drying.Species.BasicDensity.Value.KilogramsPerCubicMetre) > 1e-9;

    private static double StartOf(DryingCase drying, MemberDraw draw, double density)
    {
        var spread = StartSpreadOf(drying);
        var most = 0.98 * WoodDensity.MaximumMoisture(density) / drying.Start.Core;
        return spread > 0 ? Math.Clamp(1 + spread * draw.Start, Math.Min(0.4, most), most) : 1;
    }
}
