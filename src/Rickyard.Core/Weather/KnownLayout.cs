namespace Rickyard.Core.Weather;

/// <summary>An export whose columns have no units in the header, but are documented to have these.</summary>
/// <param name="Name">Whose export it is.</param>
/// <param name="Marks">Plain names that together give it away.</param>
/// <param name="Units">Units by role.</param>
internal sealed record KnownLayout(string Name, string[] Marks, IReadOnlyDictionary<ColumnRole, string> Units)
{
    private static readonly KnownLayout[] All =
    [
        new("US airport table (°F, mph, in)", ["origin", "temp", "dewp", "humid", "wind speed", "precip"], Of("f", "mph", "in", "mbar")),
        new("Meteostat hourly (°C, km/h, mm)", ["temp", "dwpt", "rhum", "prcp", "wspd", "pres"], Of("c", "km/h", "mm", "hpa")),
        new("PVGIS hourly (°C, m/s, W/m²)", ["t2m", "rh", "ws10m"], Of("c", "m/s", "mm", "pa")),
        new("Met Éireann hourly (°C, kn, mm)", ["rain", "temp", "rhum", "msl", "wdsp"], Of("c", "kn", "mm", "hpa")),
    ];

    /// <summary>The layout a header belongs to, or null.</summary>
    public static KnownLayout? Of(IReadOnlyCollection<string> names) => Array.Find(All, layout => layout.Marks.All(names.Contains));

    private static Dictionary<ColumnRole, string> Of(string temperature, string wind, string rain, string pressure) => new()
    {
        [ColumnRole.Temperature] = temperature,
        [ColumnRole.DewPoint] = temperature,
        [ColumnRole.RelativeHumidity] = "%",
        [ColumnRole.Wind] = wind,
        [ColumnRole.Rain] = rain,
        [ColumnRole.Sun] = "w/m2",
        [ColumnRole.StationPressure] = pressure,
        [ColumnRole.SeaLevelPressure] = pressure,
    };
}
