namespace Rickyard.Core.Boxes;

/// <summary>What a stage of a schedule is for.</summary>
public enum StageKind
{
    /// <summary>Warm air takes water off.</summary>
    Drying,

    /// <summary>Humid air keeps the shell from drying on while the core does; the charge's own water is all there is to make it humid with.</summary>
    Equalizing,

    /// <summary>The box shut tight, or the splits in a lidded fire-safe bin in it: nothing leaves, core and shell even out.</summary>
    ClosedRest,

    /// <summary>Out of the box, in the air outside it, under a roof.</summary>
    OpenRest,
}
