using Rickyard.Core.Measuring;
using Rickyard.Core.Wood;

namespace Rickyard.Meter;

/// <summary>A reading to be understood.</summary>
/// <param name="Species">The wood.</param>
/// <param name="Reading">What the meter showed.</param>
/// <param name="Place">Where the pins were, or null.</param>
internal sealed record MeterQuestion(Species Species, PinReading Reading, PinPlace? Place);
