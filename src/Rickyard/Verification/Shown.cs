using System.Globalization;
using Rickyard.Core.Verification;

namespace Rickyard.Verification;

/// <summary>Numbers of a verification with sensible digits.</summary>
internal static class Shown
{
    internal const string None = "–";

    private const double NoDecimalsFrom = 20;

    /// <summary>A value of a case.</summary>
    internal static string Value(MeasuredCase measured, double? value) => measured.IsInPoints ? Text(value, "0.0") : Number(value);

    /// <summary>Fewer digits for larger numbers.</summary>
    internal static string Number(double? value) => Text(value, Math.Abs(value ?? 0) switch { >= NoDecimalsFrom => "0", >= 10 => "0.0", _ => "0.00" });

    /// <summary>A number as its source prints it.</summary>
    internal static string Printed(double? value) => Text(value, "0.##");

    /// <summary>A fraction as a percentage.</summary>
    internal static string Percent(double fraction) => double.IsFinite(fraction) ? Text(100 * fraction, "0") + " %" : "not reached";

    /// <summary>A range, with one number where both ends are equal.</summary>
    internal static string Range(string low, string high) => low == high ? low : $"{low} to {high}";

    private static string Text(double? value, string format) => value switch
    {
        null => None,
        double.PositiveInfinity => "not reached",
        { } number => number.ToString(format, CultureInfo.InvariantCulture),
    };
}
