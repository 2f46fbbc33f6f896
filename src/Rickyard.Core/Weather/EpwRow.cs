namespace Rickyard.Core.Weather;

/// <summary>What one line of an EPW file says; null is missing.</summary>
/// <param name="Year">Only informative in a typical year.</param>
/// <param name="Month">1 to 12.</param>
/// <param name="Day">1 to 31.</param>
/// <param name="Hour">1 to 24, the hour that ends then.</param>
/// <param name="Celsius">[°C]</param>
/// <param name="RelativeHumidity">0 to 1.</param>
/// <param name="WindSpeed">[m s⁻¹]</param>
/// <param name="GlobalSun">[W m⁻²]</param>
/// <param name="Rain">Fallen in the last <paramref name="RainHours"/> hours. [mm]</param>
/// <param name="RainHours">1 to 24. [h]</param>
/// <param name="StationPressure">[Pa]</param>
internal sealed record EpwRow(
    int Year,
    int Month,
    int Day,
    int Hour,
    double? Celsius,
    double? RelativeHumidity,
    double? WindSpeed,
    double? GlobalSun,
    double? Rain,
    int RainHours,
    double? StationPressure);
