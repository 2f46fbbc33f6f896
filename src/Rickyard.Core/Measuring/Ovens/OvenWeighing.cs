using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Ovens;

/// <summary>A weighing of what is being dried.</summary>
/// <param name="Hours">Since it went in. [h]</param>
/// <param name="Mass">Then.</param>
public sealed record OvenWeighing(double Hours, Mass Mass);
