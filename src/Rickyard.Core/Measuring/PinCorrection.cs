using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>From what a pin meter showed to moisture in this wood at this temperature.</summary>
public static class PinCorrection
{
    /// <summary>Corrects a reading.</summary>
    /// <param name="reading">What the meter showed.</param>
    /// <param name="species">The wood.</param>
    /// <param name="place">Where the pins were; null where nobody said.</param>
    public static CorrectedReading Of(PinReading reading, Species species, PinPlace? place = null) => throw new NotImplementedException();
}
