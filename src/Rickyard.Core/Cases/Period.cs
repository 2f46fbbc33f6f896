using Rickyard.Core.Racks;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Cases;

/// <summary>Something that happens to the wood for a while.</summary>
/// <param name="Days">How long; null for "until the end of the run". A further split takes no time. [d]</param>
public abstract record Period(double? Days);

/// <summary>Steady air: a room, a kiln stage, a hot box whose air is known.</summary>
/// <param name="Days">How long. [d]</param>
/// <param name="Celsius">[°C]</param>
/// <param name="RelativeHumidity">0 to 1.</param>
/// <param name="Speed">Air speed at the wood; null for still indoor air. [m s⁻¹]</param>
public sealed record SteadyPeriod(double? Days, double Celsius, double RelativeHumidity, double? Speed) : Period(Days)
{
    /// <summary>Whether it is a hot box rather than a room.</summary>
    public bool InBox { get; init; }
}

/// <summary>On a rack outdoors.</summary>
/// <param name="Days">How long. [d]</param>
/// <param name="Weather">The file or the place, as named in the case.</param>
/// <param name="Rack">The rack.</param>
public sealed record RackPeriod(double? Days, WeatherName Weather, RackDescription Rack) : Period(Days);

/// <summary>Closed up in its own vapour, so that core and shell even out without losing water.</summary>
/// <param name="Days">How long. [d]</param>
/// <param name="Celsius">[°C]</param>
public sealed record RestPeriod(double? Days, double Celsius) : Period(Days);

/// <summary>Each piece is split again, through the pith, into so many; takes no time, and the moisture inside is carried over.</summary>
/// <param name="Into">2 to 8.</param>
public sealed record SplitAgainPeriod(int Into) : Period(0.0);
