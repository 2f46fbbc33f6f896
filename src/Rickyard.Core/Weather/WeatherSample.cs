using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>One row of a table, in our units; null is missing.</summary>
/// <param name="At">Local standard time of the row: the end of the span its rain belongs to.</param>
/// <param name="Line">Line of the file.</param>
/// <param name="Celsius">[°C]</param>
/// <param name="RelativeHumidity">0 to 1.</param>
/// <param name="WindSpeed">[m s⁻¹]</param>
/// <param name="Rain">Since the row before. [mm]</param>
/// <param name="GlobalSun">[W m⁻²]</param>
/// <param name="StationPressure">[Pa]</param>
internal sealed record WeatherSample(
    LocalDateTime At, int Line, double? Celsius, double? RelativeHumidity, double? WindSpeed, double? Rain, double? GlobalSun, double? StationPressure)
{
    /// <summary>The same values at the same time: a row written twice.</summary>
    public bool Repeats(WeatherSample other) => this with { Line = 0 } == other with { Line = 0 };
}
