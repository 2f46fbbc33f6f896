using MathNet.Numerics.Statistics;

using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>A species whose values are the means of those of other woods, with a wider spread: its members' own, how far they lie apart, and more.</summary>
internal static class BorrowedValues
{
    private const double ExtraGreenSpread = 0.10;
    private const double RateSpread = 0.50;
    private const string Lent = "mean of the woods that stand in";

    public static Species Resolve(SpeciesRow row, IReadOnlyList<Species> members) => new()
    {
        CommonName = row.CommonName,
        LatinName = row.LatinName,
        Aliases = row.Aliases,
        Anatomy = row.Anatomy,
        Porosity = row.Porosity,
        BasicDensity = new(Density.FromKilogramsPerCubicMetre(Densities(members).Mean()), Mark.StandIn, SourceOf(members)),
        BasicDensitySpread = DensitySpread(row, members),
        RadialShrinkage = Mean(members, member => member.RadialShrinkage),
        TangentialShrinkage = Mean(members, member => member.TangentialShrinkage),
        VolumetricShrinkage = Mean(members, member => member.VolumetricShrinkage),
        GreenWholeStem = row.GreenWholeStem,
        GreenMoisture = GreenMoisture(row, members),
        RateFactor = RateFactor(members),
        StandsIn = row.StandsIn,
        Notes = row.Notes,
    };

    private static IEnumerable<double> Densities(IEnumerable<Species> members) => members.Select(member => member.BasicDensity.Value.KilogramsPerCubicMetre);

    private static double DensitySpread(SpeciesRow row, IReadOnlyList<Species> members)
    {
        var densities = Densities(members).ToList();
        return Together(members.Select(member => member.BasicDensitySpread).Mean(), Apart(densities) / densities.Mean(), row.ExtraDensitySpread);
    }

    // Lots measured of the wood itself count as one more lender.
    private static GreenMoistureEstimate GreenMoisture(SpeciesRow row, IReadOnlyList<Species> members)
    {
        var means = members.Select(member => member.GreenMoisture.Mean).ToList();
        if (row.GreenWholeStem is { } measured) means.Add(measured.Value.Fraction);
        var spread = Together(members.Select(member => member.GreenMoisture.Spread).Mean(), Apart(means), ExtraGreenSpread * means.Mean());
        return new(means.Mean(), spread, row.GreenWholeStem is null ? Lent : "mean of lots measured of this wood and of the woods that stand in");
    }

    private static RateFactorPrior RateFactor(IReadOnlyList<Species> members)
    {
        var means = members.Select(member => member.RateFactor.MeanLog);
        return new(means.Mean(), Together(RateSpread, Apart(means)), Lent);
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
