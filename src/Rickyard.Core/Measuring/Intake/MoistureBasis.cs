namespace Rickyard.Core.Measuring.Intake;

/// <summary>What a moisture in percent is a share of.</summary>
internal enum MoistureBasis
{
    /// <summary>Water over oven-dry wood.</summary>
    Dry,

    /// <summary>Water over wood and water.</summary>
    Wet,
}
