using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>A species from a row that has values of its own.</summary>
internal static class OwnValues
{
    /// <summary>
    /// Relative standard deviation of basic density within a species: 10 % for single specimens (Wood Handbook ch. 5, from memory), less for
    /// the mean of a lot (judgement).
    /// </summary>
    public const double DensitySpread = 0.08;

    private const double RateSpreadWithFactor = 0.35;
    private const double RateSpreadWithoutFactor = 0.45;

    public static Species Resolve(SpeciesRow row, double meanFilling) => new()
    {
        CommonName = row.CommonName,
        LatinName = row.LatinName,
        Aliases = row.Aliases,
        Anatomy = row.Anatomy,
        Porosity = row.Porosity,
        BasicDensity = new(Density.FromKilogramsPerCubicMetre(1000 * row.BasicGravity!.Value), row.BasicGravity.Mark, row.BasicGravity.Source),
        BasicDensitySpread = Math.Sqrt(DensitySpread * DensitySpread + row.ExtraDensitySpread * row.ExtraDensitySpread),
        GravityAtTwelvePercent = row.GravityAtTwelvePercent,
        GreenHeartwood = row.GreenHeartwood,
        GreenSapwood = row.GreenSapwood,
        GreenWholeStem = row.GreenWholeStem,
        RadialShrinkage = row.RadialShrinkage,
        TangentialShrinkage = row.TangentialShrinkage,
        VolumetricShrinkage = row.VolumetricShrinkage,
        DryingFactor = row.DryingFactor,
        GreenMoisture = GreenMoistureRule.Resolve(row, meanFilling),
        RateFactor = RateFactorOf(row.DryingFactor),
        StandsIn = [],
        Notes = row.Notes,
    };

    // Halfway to 1 in the logarithm: the day ranges behind the factor are too coarse to be believed whole (judgement).
    private static RateFactorPrior RateFactorOf(Sourced<double>? factor) => factor is null
        ? new(0, RateSpreadWithoutFactor, "no drying time published: density alone")
        : new(Math.Log(factor.Value) / 2, RateSpreadWithFactor, "published drying factor, shrunk halfway to 1 in the logarithm");
}
