namespace Rickyard.Core.Measuring.Meters;

/// <summary>A published correction of a pin reading for the temperature of the wood.</summary>
/// <param name="Name">Who published it.</param>
/// <param name="ZeroCelsius">Temperature at which it corrects nothing. [°C]</param>
/// <param name="Mark">How well it is known.</param>
/// <param name="Add">What it adds to a reading at a wood temperature; readings and what is added in points of % dry basis, as published. [points]</param>
public sealed record TemperatureMethod(string Name, double ZeroCelsius, string Mark, Func<double, double, double> Add);
