namespace Rickyard.Core.Measuring;

/// <summary>How much a reading says.</summary>
public enum MeterVerdict
{
    /// <summary>A moisture with its spread.</summary>
    Measured,

    /// <summary>Only that the wood at the pins is at least this wet.</summary>
    AtLeast,

    /// <summary>Only that the wood at the pins is at most this wet.</summary>
    AtMost,
}
