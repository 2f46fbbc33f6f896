using Rickyard.Core.Air;
using Rickyard.Core.Wood;

namespace Rickyard.Benchmarks;

/// <summary>
/// Problem B: a yearly and a daily swing of temperature, vapour pressure from 68 % at the daily mean. Running sums give, for any step, the
/// air that drives the same mean flux: see <see cref="MeanAir"/>.
/// </summary>
internal sealed class SeasonalReferenceAir : IReferenceAir
{
    private const double Interval = 3600;
    private readonly double[] _saturation, _vapor, _mobility, _balance;

    public SeasonalReferenceAir(double days)
    {
        var count = (int)(days * 86400 / Interval) + 1;
        (_saturation, _vapor, _mobility, _balance) = (new double[count + 1], new double[count + 1], new double[count + 1], new double[count + 1]);
        for (var i = 0; i < count; i++)
        {
            var (celsius, vapor) = At((i + 0.5) * Interval);
            double saturation = SaturationPressure.Of(celsius + 273.15), mobility = Math.Exp(-Activation / (celsius + 273.15));
            _saturation[i + 1] = _saturation[i] + saturation;
            _vapor[i + 1] = _vapor[i] + vapor;
            _mobility[i + 1] = _mobility[i] + mobility;
            _balance[i + 1] = _balance[i] + mobility * SorptionIsotherm.At(celsius).Moisture(vapor / saturation);
        }
    }

    public const double Activation = 5280;

    public MeanAir Mean(double time, double step)
    {
        double start = time / Interval, end = (time + step) / Interval, span = end - start;
        double saturation = Integral(_saturation, start, end) / span, vapor = Integral(_vapor, start, end) / span, mobility = Integral(_mobility, start, end);
        var celsius = -Activation / Math.Log(mobility / span) - 273.15;
        return new(celsius, saturation, vapor, SorptionIsotherm.At(celsius).Activity(Integral(_balance, start, end) / mobility));
    }

    private static (double Celsius, double Vapor) At(double time)
    {
        double day = time / 86400, mean = 13 - 11 * Math.Cos(2 * Math.PI * (day / 365 + 0.2)), celsius = mean + 6 * Math.Sin(2 * Math.PI * day);
        return (celsius, Math.Min(0.68 * SaturationPressure.Of(mean + 273.15), 0.99 * SaturationPressure.Of(celsius + 273.15)));
    }

    private static double Integral(double[] sums, double start, double end) => At(sums, end) - At(sums, start);

    private static double At(double[] sums, double position)
    {
        var i = Math.Min((int)position, sums.Length - 2);
        return sums[i] + (position - i) * (sums[i + 1] - sums[i]);
    }
}
