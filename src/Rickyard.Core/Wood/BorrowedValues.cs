using MathNet.Numerics.Statistics;

using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>A species whose values are the means of those of other woods, with a wider spread: its members' own, how far they lie apart, and more.</summary>
internal static class BorrowedValues
{
    private const double ExtraGreenSpread = 0.10;
    private const double RateSpread = 0.50;

    public static Species Resolve(SpeciesRow row, IReadOnlyList<Species> members) => new()
    {
        CommonName = row.CommonName,
        LatinName = row.LatinName,
        Aliases = row.Aliases,
        Anatomy = row.Anatomy,
        Porosity = row.Porosity,
        BasicDensity = new(Density.FromKilogramsPerCubicMetre(Densities(members).Mean()), Mark.StandIn, SourceOf(members)),
        BasicDensitySpread = Together(members.Select(member => member.BasicDensitySpread).Mean(), Apart(Densities(members)) / Densities(members).Mean(), row.ExtraDensitySpread),
        RadialShrinkage = Mean(members, member => member.RadialShrinkage),
        TangentialShrinkage = Mean(members, member => member.TangentialShrinkage),
        VolumetricShrinkage = Mean(members, member => member.VolumetricShrinkage),
        GreenMoisture = GreenMoisture(members),
        RateFactor = RateFactor(members),
        StandsIn = row.StandsIn,
        Notes = row.Notes,
    };

    private static IEnumerable<double> Densities(IEnumerable<Species> members) => members.Select(member => member.BasicDensity.Value.KilogramsPerCubicMetre);

    private static GreenMoistureEstimate GreenMoisture(IReadOnlyList<Species> members)
    {
        var means = members.Select(member => member.GreenMoisture.Mean);
        var spread = Together(members.Select(member => member.GreenMoisture.Spread).Mean(), Apart(means), ExtraGreenSpread * means.Mean());
        return new(means.Mean(), spread, "mean of the woods that stand in");
    }

    private static RateFactorPrior RateFactor(IReadOnlyList<Species> members)
    {
        var means = members.Select(member => member.RateFactor.MeanLog);
        return new(means.Mean(), Together(RateSpread, Apart(means)), "mean of the woods that stand in");
    }

    private static Sourced<double>? Mean(IReadOnlyList<Species> members, Func<Species, Sourced<double>?> value)
    {
        var published = members.Select(value).OfType<Sourced<double>>().Select(sourced => sourced.Value).ToList();
        return published.Count == 0 ? null : new(published.Mean(), Mark.StandIn, SourceOf(members));
    }

    private static string SourceOf(IReadOnlyList<Species> members) => members.Count <= 4
        ? "mean of " + string.Join(", ", members.Select(member => member.CommonName))
        : $"mean of {members.Count} woods";

    private static double Apart(IEnumerable<double> values) => values.PopulationStandardDeviation();

    private static double Together(params double[] deviations) => Math.Sqrt(deviations.Sum(deviation => deviation * deviation));
}
