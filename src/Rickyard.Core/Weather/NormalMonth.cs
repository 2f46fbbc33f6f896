namespace Rickyard.Core.Weather;

/// <summary>Mean weather of one month of the year.</summary>
/// <param name="HighCelsius">Mean of the daily highs. [°C]</param>
/// <param name="LowCelsius">Mean of the daily lows. [°C]</param>
/// <param name="RelativeHumidity">Mean over day and night, 0 to 1.</param>
/// <param name="WindSpeed">At about 10 m over open ground. [m s⁻¹]</param>
/// <param name="Rain">Rain and melted snow in the month; null: not known, which is not zero. [mm]</param>
/// <param name="WetDays">Days with at least 0.25 mm; null: not known.</param>
public readonly record struct NormalMonth(
    double HighCelsius, double LowCelsius, double RelativeHumidity, double WindSpeed, double? Rain, double? WetDays);
