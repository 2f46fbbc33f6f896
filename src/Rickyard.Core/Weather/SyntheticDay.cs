namespace Rickyard.Core.Weather;

/// <summary>One day as drawn or as read from a daily record, before it is spread over its hours.</summary>
/// <param name="MeanCelsius">Middle of high and low. [°C]</param>
/// <param name="RangeKelvins">High minus low. [K]</param>
/// <param name="RelativeHumidity">Mean of the day, 0 to 1.</param>
/// <param name="WindSpeed">Mean of the day. [m s⁻¹]</param>
/// <param name="Sun">Mean global radiation of the day. [W m⁻²]</param>
/// <param name="Rain">Rain of each of the 24 hours. [mm]</param>
internal sealed record SyntheticDay(double MeanCelsius, double RangeKelvins, double RelativeHumidity, double WindSpeed, double Sun, double[] Rain);
