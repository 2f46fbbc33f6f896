using Rickyard.Core.Wood;

namespace Rickyard.Core.Cases;

/// <summary>What the wood of a case is; null where a problem kept it from being understood.</summary>
/// <param name="Species">The wood.</param>
/// <param name="BasicDensity">Given, else the species'. [kg m⁻³]</param>
/// <param name="RateFactor">Given, else null.</param>
internal sealed record WoodSection(Species? Species, double? BasicDensity, double? RateFactor)
{
    private static readonly double LightestWood = SpeciesCatalogue.All.Min(species => species.BasicDensity.Value.KilogramsPerCubicMetre);

    /// <summary>The most water the pores hold; where the wood is not known, that of the lightest one. [kg kg⁻¹]</summary>
    public double MaximumMoisture => WoodDensity.MaximumMoisture(BasicDensity ?? LightestWood);

    public static WoodSection Read(CaseObject root, CaseFindings findings)
    {
        if (root.NeededGroup("wood", "species", "basic density", "rate factor") is not { } wood) return new(null, null, null);
        var species = SpeciesOf(wood, findings);
        var density = wood.Quantity("basic density", CaseLimits.BasicDensity);
        if (species is not null && !wood.Has("basic density")) findings.Assume(UsualDensity(species));
        return new(species, density ?? species?.BasicDensity.Value.KilogramsPerCubicMetre, wood.Number("rate factor", 0.05, 20));
    }

    private static Species? SpeciesOf(CaseObject wood, CaseFindings findings)
    {
        if (wood.NeededText("species", "Give the wood's name, such as \"northern red oak\"; rickyard species lists them.") is not { } name) return null;
        var found = SpeciesCatalogue.Find(name, wood.PathOf("species"));
        foreach (var problem in found.Problems) findings.Wrong(problem);
        if (found.Value is { IsStandIn: true } standIn) findings.Assume($"{standIn.CommonName} has no values of its own: those of {string.Join(", ", standIn.StandsIn)} stand in, with a wider spread.");
        return found.Value;
    }

    private static string UsualDensity(Species species) =>
        $"Basic density was not given: {species.BasicDensity.Value} for {species.CommonName} ({species.BasicDensity.Source}).";
}
