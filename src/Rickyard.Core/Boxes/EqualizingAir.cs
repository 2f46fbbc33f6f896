namespace Rickyard.Core.Boxes;

/// <summary>Air that keeps wood at a moisture.</summary>
/// <param name="Celsius">Dry bulb. [°C]</param>
/// <param name="RelativeHumidity">0 to 1.</param>
/// <param name="WetBulbCelsius">What a wet wick reads in it. [°C]</param>
/// <param name="HumidityRatio">Vapour over dry air: what has to be in the box's air. [kg kg⁻¹]</param>
public sealed record EqualizingAir(double Celsius, double RelativeHumidity, double WetBulbCelsius, double HumidityRatio);
