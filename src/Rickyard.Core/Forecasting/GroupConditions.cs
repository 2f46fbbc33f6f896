using Rickyard.Core.Racks;

namespace Rickyard.Core.Forecasting;

/// <summary>What a group of members shares: its weather and how its rack differs from the description.</summary>
/// <param name="Weather">Number of the weather drawn, or null for the usual weather.</param>
/// <param name="Rack">Its rack.</param>
internal sealed record GroupConditions(int? Weather, RackFactors Rack)
{
    /// <summary>Of the typical split.</summary>
    internal static GroupConditions Typical { get; } = new(null, RackFactors.AsDescribed);

    /// <summary>Of one group of an ensemble, the same for the same seed.</summary>
    internal static GroupConditions Of(int group, int seed) =>
        new(WeatherNumber(group, seed), new RackUncertainty().Draw(unchecked(seed * 31337 + group)));

    /// <summary>Number of a group's weather.</summary>
    internal static int WeatherNumber(int group, int seed) => unchecked(seed * 1009 + group);
}
