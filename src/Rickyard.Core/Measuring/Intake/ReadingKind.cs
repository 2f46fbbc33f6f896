namespace Rickyard.Core.Measuring.Intake;

/// <summary>What a reading is.</summary>
internal enum ReadingKind
{
    /// <summary>A pin meter's number.</summary>
    Pin,

    /// <summary>Mass of a marked split.</summary>
    Weighing,

    /// <summary>Moisture found by drying.</summary>
    Oven,

    /// <summary>Oven-dry mass of a marked split.</summary>
    OvenDryMass,

    /// <summary>What the supplier said.</summary>
    Promise,

    /// <summary>Something seen or heard.</summary>
    Sign,
}
