using CsCheck;
using Rickyard.Core.Boxes.HeatTreatment;

namespace Rickyard.Core.Tests.Boxes.HeatTreatment;

/// <summary>Invented logs of core temperatures.</summary>
internal static class AnyLog
{
    /// <summary>One to four sensors near 60 °C, whole degrees, some readings missing, gaps of one to eight minutes.</summary>
    public static Gen<CoreLog> Near60 { get; } =
        from sensors in Gen.Int[1, 4]
        from readings in Gen.Int[1, 60]
        from gaps in Gen.Int[1, 8].Select(gap => gap > 6 ? gap : Math.Min(gap, 5)).Array[readings]
        from celsius in Gen.Frequency((30, Gen.Int[58, 70].Select(degree => (double)degree)), (1, Gen.Const(double.NaN))).Array[readings].Array[sensors]
        select Of([.. gaps.Select((_, reading) => gaps.Take(reading).Sum() * 60.0)], celsius);

    public static CoreLog Of(double[] seconds, params double[][] celsius) => new()
    {
        Sensors = [.. celsius.Select((_, sensor) => FormattableString.Invariant($"core {sensor + 1}"))],
        Seconds = seconds,
        Stamps = [.. seconds.Select(second => FormattableString.Invariant($"{second / 60:0} min"))],
        Celsius = celsius,
    };

    /// <summary>Readings every so many minutes of one sensor.</summary>
    public static CoreLog Every(double minutes, params double[] celsius) => Of([.. celsius.Select((_, reading) => reading * minutes * 60)], celsius);
}
