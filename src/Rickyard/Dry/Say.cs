using Rickyard.Core.Drying;
using static System.FormattableString;

namespace Rickyard.Dry;

/// <summary>Numbers of a run in words, with unit and basis and no more digits than they are worth.</summary>
internal static class Say
{
    /// <summary>"19.8 % dry basis".</summary>
    public static string Moisture(double fraction) => $"{Percent(fraction)} % dry basis";

    /// <summary>"19.8", or "119" from a hundred up.</summary>
    public static string Percent(double fraction) => fraction >= 0.9995 ? Invariant($"{100 * fraction:0}") : Invariant($"{100 * fraction:0.0}");

    /// <summary>"18–20 % dry basis".</summary>
    public static string Band(ReadyWindow window) => Invariant($"{100 * window.BandLow:0.#}–{100 * window.BandHigh:0.#} % dry basis");

    /// <summary>"3.21 kg (7.1 lb)".</summary>
    public static string Mass(double kilograms) => Invariant($"{kilograms:0.00} kg ({kilograms / 0.45359237:0.0} lb)");

    /// <summary>"3.6 points".</summary>
    public static string Points(double fraction) => Invariant($"{100 * Math.Abs(fraction):0.0} points");

    /// <summary>"64 %", of a share.</summary>
    public static string Share(double fraction) => Invariant($"{100 * fraction:0} %");
}
