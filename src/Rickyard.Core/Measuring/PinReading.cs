namespace Rickyard.Core.Measuring;

/// <summary>What a pin meter showed, before any correction.</summary>
/// <param name="Shown">Number on the display, as a fraction: 0.20 for "20 %". [kg kg⁻¹ on the meter's scale]</param>
/// <param name="Range">A number, or off the scale on one side of it.</param>
/// <param name="Scale">The scale or species setting the meter was on.</param>
/// <param name="WoodCelsius">Temperature of the wood at the pins; null where nobody knows, which widens the answer. [°C]</param>
public sealed record PinReading(double Shown, ShownRange Range, MeterScale Scale, double? WoodCelsius);
