namespace Rickyard.Benchmarks;

/// <summary>
/// Air that drives over a step the mean flux of air that varies within it. A wet surface sees mean saturation minus mean vapour pressure;
/// a surface limited by the wood sees the equilibrium moisture weighted by how mobile the water is, given as a humidity.
/// </summary>
/// <param name="Celsius">Temperature at which diffusion has its mean rate. [°C]</param>
/// <param name="Saturation">Mean saturation pressure. [Pa]</param>
/// <param name="Vapor">Mean vapour pressure. [Pa]</param>
/// <param name="Humidity">Humidity whose equilibrium moisture is the weighted mean.</param>
internal readonly record struct MeanAir(double Celsius, double Saturation, double Vapor, double Humidity);
