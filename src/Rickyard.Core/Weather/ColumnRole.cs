namespace Rickyard.Core.Weather;

/// <summary>What a column of a weather table holds.</summary>
internal enum ColumnRole
{
    /// <summary>Date, or date and time.</summary>
    Time,

    /// <summary>Time of day beside a date.</summary>
    Clock,

    /// <summary>Year, month, day, hour in columns of their own.</summary>
    Year,

    /// <inheritdoc cref="Year"/>
    Month,

    /// <inheritdoc cref="Year"/>
    Day,

    /// <summary>Station or place of the row.</summary>
    Station,

    /// <summary>Air temperature.</summary>
    Temperature,

    /// <summary>High of the day.</summary>
    High,

    /// <summary>Low of the day.</summary>
    Low,

    /// <summary>Dew point.</summary>
    DewPoint,

    /// <summary>Relative humidity.</summary>
    RelativeHumidity,

    /// <summary>Mean wind speed, not gusts.</summary>
    Wind,

    /// <summary>Rain fallen since the row before, not a rate and not a running total.</summary>
    Rain,

    /// <summary>Global horizontal radiation.</summary>
    Sun,

    /// <summary>Pressure at the station.</summary>
    StationPressure,

    /// <summary>Pressure reduced to sea level.</summary>
    SeaLevelPressure,
}
