using Rickyard.Core.Air;

namespace Rickyard.Core.Drying;

/// <summary>
/// The surroundings of a split through time as running sums, so that the mean over any step costs the same however many hours it spans
/// (physics.md, N6): hourly weather does not force hourly steps. Piecewise constant; the last span is held.
/// </summary>
public sealed class AirSeries
{
    private const int Quantities = 10;
    private const double Activation = 5280;

    private readonly double[] _ends, _sums;
    private readonly double[] _rates;

    /// <summary>From spans of constant surroundings.</summary>
    /// <param name="spans">Length of each [s] and what it is like.</param>
    public AirSeries(IReadOnlyList<(double Seconds, Surroundings Air)> spans)
    {
        if (spans.Count == 0) throw new ArgumentException("Give at least one span of air.", nameof(spans));
        _ends = new double[spans.Count];
        _rates = new double[spans.Count * Quantities];
        _sums = new double[(spans.Count + 1) * Quantities];
        for (var i = 0; i < spans.Count; i++) Append(i, spans[i].Seconds, spans[i].Air);
    }

    /// <summary>Equal spans, as of hourly weather.</summary>
    public static AirSeries Of(IReadOnlyList<Surroundings> air, double seconds) => new([.. air.Select(a => (seconds, a))]);

    /// <summary>The same air for ever.</summary>
    public static AirSeries Steady(Surroundings air) => new([(86400, air)]);

    /// <summary>End of the last span. [s]</summary>
    public double End => _ends[^1];

    /// <summary>Mean over a step.</summary>
    /// <param name="time">Start. [s]</param>
    /// <param name="step">Length, above zero. [s]</param>
    public StepAir Mean(double time, double step)
    {
        Span<double> from = stackalloc double[Quantities], to = stackalloc double[Quantities];
        Integrate(time, from);
        Integrate(time + step, to);
        for (var q = 0; q < Quantities; q++) to[q] = (to[q] - from[q]) / step;
        var kelvins = to[0];
        return new(
            kelvins, to[1], to[2] / SaturationPressure.Of(kelvins), to[3] / Mobility(kelvins), to[4], to[5], to[6], to[7],
            to[8] > 0 ? 1 / to[8] : double.PositiveInfinity, to[9]);
    }

    private static double Mobility(double kelvins) => Math.Exp(-Activation / kelvins);

    private void Append(int i, double seconds, Surroundings air)
    {
        _ends[i] = (i == 0 ? 0 : _ends[i - 1]) + seconds;
        var rates = _rates.AsSpan(i * Quantities, Quantities);
        (rates[0], rates[1], rates[2], rates[3]) = (air.TemperatureKelvins, air.VaporPressure,
            SaturationPressure.Of(air.TemperatureKelvins), Mobility(air.TemperatureKelvins));
        (rates[4], rates[5], rates[6], rates[7], rates[8]) = (air.ConvectiveCoefficient, air.AbsorbedRadiation, air.RainOnSides, air.RainOnEnds, 1 / Math.Max(air.FreshAir, Surroundings.ClosedUp));
        rates[9] = air.RadiantView;
        for (var q = 0; q < Quantities; q++) _sums[(i + 1) * Quantities + q] = _sums[i * Quantities + q] + rates[q] * seconds;
    }

    private void Integrate(double time, Span<double> integral)
    {
        var i = SpanAt(time);
        var into = time - (i == 0 ? 0 : _ends[i - 1]);
        for (var q = 0; q < Quantities; q++) integral[q] = _sums[i * Quantities + q] + into * _rates[i * Quantities + q];
    }

    private int SpanAt(double time)
    {
        var found = Array.BinarySearch(_ends, time);
        return Math.Min(found >= 0 ? found + 1 : ~found, _ends.Length - 1);
    }
}
