namespace Rickyard.Core.Measuring;

/// <summary>What stood on a meter's display.</summary>
/// <param name="Shown">The number as a fraction; 0 where it only went off its scale. [kg kg⁻¹ on the meter's scale]</param>
/// <param name="Range">A number, or off the scale.</param>
public sealed record MeterDisplay(double Shown, ShownRange Range);
