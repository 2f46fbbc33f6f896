namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>What a column of a temperature log holds.</summary>
internal enum LogColumnKind
{
    /// <summary>A date, with or without a time of day.</summary>
    Date,

    /// <summary>A date and time, or a time of day alone.</summary>
    Clock,

    /// <summary>A number of seconds, minutes or hours from the start.</summary>
    Elapsed,

    /// <summary>Temperature of a core.</summary>
    Wood,

    /// <summary>Temperature of the air in the box.</summary>
    Air,

    /// <summary>Something known not to be a core temperature.</summary>
    Other,

    /// <summary>Neither a known word nor a unit of temperature.</summary>
    Unknown,
}
