namespace Rickyard.Core.Weather;

/// <summary>Outdoor air during one hour (or at its end, for what a station samples), after all gaps have been filled.</summary>
/// <param name="Celsius">Dry-bulb temperature. [°C]</param>
/// <param name="RelativeHumidity">Over water also below 0 °C, 0 to 1.</param>
/// <param name="WindSpeed">At about 10 m over open ground. [m s⁻¹]</param>
/// <param name="GlobalSun">Global horizontal radiation, mean of the hour. [W m⁻²]</param>
/// <param name="Rain">Rain or melted snow fallen in the hour. [mm = kg m⁻²]</param>
/// <param name="StationPressure">[Pa]</param>
public readonly record struct WeatherHour(
    double Celsius, double RelativeHumidity, double WindSpeed, double GlobalSun, double Rain, double StationPressure);
