using NodaTime;
using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes;

/// <summary>The air outside a box through time as running sums, so that its mean over a step costs the same however long it is.</summary>
internal sealed class OutsideSeries
{
    private readonly double[] _kelvins, _vapor, _sun;
    private readonly double _spanSeconds;

    private OutsideSeries(IReadOnlyList<Outside> spans, double spanSeconds, double pressure)
    {
        (_spanSeconds, Pressure) = (spanSeconds, pressure);
        (_kelvins, _vapor, _sun) = (Sums(spans, o => o.Kelvins), Sums(spans, o => o.VaporPressure), Sums(spans, o => o.Sun));
    }

    /// <summary>Air pressure. [Pa]</summary>
    internal double Pressure { get; }

    /// <summary>The same air throughout, without sun.</summary>
    internal static OutsideSeries Steady(double celsius, double humidity) => new(
        [new(celsius + Temperature.IcePointKelvins, humidity * SaturationPressure.OverWater(celsius + Temperature.IcePointKelvins), 0)],
        double.MaxValue, Quantities.Pressure.StandardAtmosphere.Pascals);

    /// <summary>Hourly weather.</summary>
    internal static OutsideSeries Of(HourlyWeather weather) => new(
        [.. weather.Hours.Select(Hour)], NodaConstants.SecondsPerHour, StandardPressure.AtElevation(weather.ElevationMetres).Pascals);

    /// <summary>Mean over a step; past the end the last hour is held.</summary>
    internal Outside Mean(double time, double step) => new(MeanOf(_kelvins, time, step), MeanOf(_vapor, time, step), MeanOf(_sun, time, step));

    private static Outside Hour(WeatherHour hour)
    {
        var kelvins = hour.Celsius + Temperature.IcePointKelvins;
        return new(kelvins, hour.RelativeHumidity * SaturationPressure.OverWater(kelvins), hour.GlobalSun);
    }

    private double MeanOf(double[] sums, double time, double step) =>
        sums.Length == 2 ? sums[1] : (At(sums, (time + step) / _spanSeconds) - At(sums, time / _spanSeconds)) * _spanSeconds / step;

    private static double At(double[] sums, double place)
    {
        var span = Math.Min((int)place, sums.Length - 2);
        return sums[span] + (place - span) * (sums[span + 1] - sums[span]);
    }

    private static double[] Sums(IReadOnlyList<Outside> spans, Func<Outside, double> value)
    {
        var sums = new double[spans.Count + 1];
        for (var i = 0; i < spans.Count; i++) sums[i + 1] = sums[i] + value(spans[i]);
        return sums;
    }
}
