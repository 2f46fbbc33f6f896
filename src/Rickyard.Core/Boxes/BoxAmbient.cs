using Rickyard.Core.Cases;

namespace Rickyard.Core.Boxes;

/// <summary>The air outside a box: steady, or weather by a file or a place.</summary>
/// <param name="Celsius">Of steady air; unused with weather. [°C]</param>
/// <param name="RelativeHumidity">Of steady air, 0 to 1; unused with weather.</param>
/// <param name="Weather">Named weather, or null for steady air.</param>
public sealed record BoxAmbient(double Celsius, double RelativeHumidity, WeatherName? Weather = null);
