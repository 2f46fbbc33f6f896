using Rickyard.Core.Drying;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Testing.Drying;

/// <summary>A year of hours made from the normals of Des Moines, Iowa: frost, rain on bare racks, nights at the dew point.</summary>
public static class DesMoinesYear
{
    /// <summary>Hours in it.</summary>
    public const int Hours = 8760;

    /// <summary>The weather.</summary>
    public static HourlyWeather Weather { get; } = SyntheticWeather.Year(NormalsCatalogue.Find("Des Moines").Value!, 1, new(2023, 1, 1, 0, 0), Hours);

    /// <summary>What a split meets on a rack there.</summary>
    public static AirSeries OnRack(Split split, RackDescription rack) =>
        AirSeries.Of(RackAir.Surroundings(Weather, rack, new(split.SurfaceDiameter, split.Length)), 3600);

    /// <summary>The same on an uncovered rack in full wind and sun.</summary>
    public static AirSeries InTheOpen(Split split) => OnRack(split, new(RackCover.None, RackSun.Full, RackWind.Open));
}
