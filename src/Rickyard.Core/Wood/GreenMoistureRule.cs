using static System.FormattableString;

using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>
/// Green moisture of a mixed split from what is published (physics.md, eq. W8). Relative standard deviations are judgement, set by how far
/// the two published kinds of value lie apart for the 22 hardwoods that have both (15 % root mean square) and by measured lots.
/// </summary>
internal static class GreenMoistureRule
{
    private const double OfHeartAndSap = 0.15;
    private const double OfWholeStem = 0.18;
    private const double OfGenus = 0.22;
    private const double OfFilling = 0.25;

    /// <summary>Published first; else the pore space of this wood filled as that of its kin is.</summary>
    public static GreenMoistureEstimate Resolve(SpeciesRow row, double meanFilling) => Published(row) ?? Estimate(
        meanFilling * WoodDensity.MaximumMoisture(1000 * row.BasicGravity!.Value),
        OfFilling,
        Invariant($"nothing usable published: pores {100 * meanFilling:0} % as full as they can be, the mean of its kin"));

    /// <summary>From the wood's own published values, or null.</summary>
    public static GreenMoistureEstimate? Published(SpeciesRow row) => (row.GreenHeartwood, row.GreenSapwood, row.GreenWholeStem) switch
    {
        ({ } heart, { } sap, _) => Mixed(heart.Value, sap.Value),
        ({ } heart, null, { } stem) => Half(heart.Value, stem.Value, "heartwood"),
        (null, { } sap, { } stem) => Half(sap.Value, stem.Value, "sapwood"),
        (null, null, { } stem) when row.GreenWholeStemIsGenus => Estimate(stem.Value.Fraction, OfGenus, "whole stem, value of the genus"),
        (null, null, { } stem) => Estimate(stem.Value.Fraction, OfWholeStem, "whole stem"),
        ({ } one, null, null) => Estimate(one.Value.Fraction, OfGenus, "heartwood only"),
        (null, { } one, null) => Estimate(one.Value.Fraction, OfGenus, "sapwood only"),
        _ => null,
    };

    // A split may be any part sap: the share is taken as uniform, so its standard deviation is 1/√12 of the difference.
    private static GreenMoistureEstimate Mixed(MoistureContent heart, MoistureContent sap)
    {
        double mean = (heart.Fraction + sap.Fraction) / 2, between = (heart.Fraction - sap.Fraction) / Math.Sqrt(12);
        return new(mean, Math.Sqrt(Math.Pow(OfHeartAndSap * mean, 2) + between * between), "mean of heartwood and sapwood");
    }

    private static GreenMoistureEstimate Half(MoistureContent part, MoistureContent stem, string partName) =>
        Estimate((part.Fraction + stem.Fraction) / 2, OfWholeStem, $"mean of {partName} and whole stem");

    private static GreenMoistureEstimate Estimate(double mean, double relative, string rule) => new(mean, relative * mean, rule);
}
