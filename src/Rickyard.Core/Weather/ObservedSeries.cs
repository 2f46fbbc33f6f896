using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Hours as a file gave them, in place on an axis without holes; null is missing.</summary>
/// <param name="file">Name of the file, for messages.</param>
/// <param name="start">When the first hour begins.</param>
/// <param name="count">How many hours.</param>
internal sealed class ObservedSeries(string file, LocalDateTime start, int count)
{
    public string File { get; } = file;

    public LocalDateTime Start { get; } = start;

    public int Count { get; } = count;

    public double?[] Celsius { get; } = new double?[count];

    public double?[] RelativeHumidity { get; } = new double?[count];

    public double?[] WindSpeed { get; } = new double?[count];

    public double?[] GlobalSun { get; } = new double?[count];

    public double?[] Rain { get; } = new double?[count];

    public double?[] StationPressure { get; } = new double?[count];

    public required WeatherSite Site { get; init; }

    public required string Source { get; init; }

    public bool Typical { get; init; }

    public List<string> Notes { get; } = [];
}
