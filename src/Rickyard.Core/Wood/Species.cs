using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>
/// A wood: its published values, each with its source, and what the engine takes from them by stated rules (physics.md, eq. W8 to W11).
/// Null means that nothing is published.
/// </summary>
public sealed record Species
{
    /// <summary>The name used on screen.</summary>
    public required string CommonName { get; init; }

    /// <summary>Botanical name; empty for stand-ins that are no one species.</summary>
    public required string LatinName { get; init; }

    /// <summary>Other names people use.</summary>
    public required IReadOnlyList<string> Aliases { get; init; }

    /// <summary>Vessel class.</summary>
    public required Anatomy Anatomy { get; init; }

    /// <summary>The words the class was read from.</summary>
    public Sourced<string>? Porosity { get; init; }

    /// <summary>Oven-dry mass over green volume; always there, its mark says whether another wood stands in.</summary>
    public required Sourced<Density> BasicDensity { get; init; }

    /// <summary>Relative standard deviation of <see cref="BasicDensity"/> of a lot. [–]</summary>
    public required double BasicDensitySpread { get; init; }

    /// <summary>Oven-dry mass over volume at 12 %, over that of water. [–]</summary>
    public Sourced<double>? GravityAtTwelvePercent { get; init; }

    /// <summary>Green heartwood.</summary>
    public Sourced<MoistureContent>? GreenHeartwood { get; init; }

    /// <summary>Green sapwood.</summary>
    public Sourced<MoistureContent>? GreenSapwood { get; init; }

    /// <summary>Green wood of a whole stem.</summary>
    public Sourced<MoistureContent>? GreenWholeStem { get; init; }

    /// <summary>Radial shrinkage, green to oven-dry. [–]</summary>
    public Sourced<double>? RadialShrinkage { get; init; }

    /// <summary>Tangential shrinkage, green to oven-dry. [–]</summary>
    public Sourced<double>? TangentialShrinkage { get; init; }

    /// <summary>Shrinkage of the volume, green to oven-dry. [–]</summary>
    public Sourced<double>? VolumetricShrinkage { get; init; }

    /// <summary>Rate of drying beside northern red oak's with the effect of density taken out; from very coarse day ranges. [–]</summary>
    public Sourced<double>? DryingFactor { get; init; }

    /// <summary>Moisture of a mixed green split.</summary>
    public required GreenMoistureEstimate GreenMoisture { get; init; }

    /// <summary>Prior of the rate factor.</summary>
    public required RateFactorPrior RateFactor { get; init; }

    /// <summary>Common names of the woods whose values stand in; empty for a wood with values of its own.</summary>
    public required IReadOnlyList<string> StandsIn { get; init; }

    /// <summary>Whether other woods' values stand in for this one's.</summary>
    public bool IsStandIn => StandsIn.Count > 0;

    /// <summary>What else is known or doubtful.</summary>
    public required string Notes { get; init; }
}
