namespace Rickyard.Core.Boxes;

/// <summary>A box, where it stands, and the stages it is to run.</summary>
public sealed record BoxPlan
{
    /// <summary>The box.</summary>
    public required BoxDescription Box { get; init; }

    /// <summary>The air outside it.</summary>
    public required BoxAmbient Ambient { get; init; }

    /// <summary>In order; the last is held to the end of the run.</summary>
    public required IReadOnlyList<BoxStage> Stages { get; init; }

    /// <summary>What energy costs, or null where it was not said.</summary>
    public EnergyPrice? Price { get; init; }

    /// <summary>The user's own words for going above a safety limit, shown on everything printed; null without.</summary>
    public string? Override { get; init; }
}
