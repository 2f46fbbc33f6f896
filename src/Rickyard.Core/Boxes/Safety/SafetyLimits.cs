using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Boxes.Safety;

/// <summary>Above what a plan is refused, or refused unless the user takes it on with words of their own.</summary>
public static class SafetyLimits
{
    /// <summary>
    /// Wood in contact with surfaces from 77 °C (170 °F) up has caught fire after long times (Babrauskas, Gray and Janssens 2007, Fire and
    /// Materials 31:125-135); no air setting above it without the user's own words. [°C]
    /// </summary>
    public const double LongContactCelsius = 77;

    /// <summary>Where a cut-out of its own must have switched the heater off (engineering practice, a suggestion); no air setting reaches it. [°C]</summary>
    public const double CutOutCelsius = 93;

    /// <summary>What a plug may draw for hours: 80 % of 15 A at 120 V, the most of a usual household circuit in North America (common practice, no source). [W]</summary>
    public const double CircuitWatts = 1440;

    /// <summary>What keeps a thermostat setting from being run, or null.</summary>
    /// <param name="celsius">The setting. [°C]</param>
    /// <param name="band">Thermostat band; the air goes half of it above the setting. [K]</param>
    /// <param name="reason">The user's own words for going above a limit, or null.</param>
    /// <param name="field">Where the setting came from.</param>
    public static Problem? Refusal(double celsius, double band, string? reason, string field)
    {
        if (celsius + band / 2 > CutOutCelsius) return new(field, $"{AirOf(celsius, band)} is above {CutOutCelsius:0} °C, where a cut-out must have switched the heater off.", Invariant($"Give at most {LongContactCelsius:0} °C; no override reaches {CutOutCelsius:0} °C."));
        if (celsius <= LongContactCelsius || reason is not null) return null;
        return new(
            field,
            Invariant($"{celsius:0.#} °C is above {LongContactCelsius:0} °C (170 °F): wood in long contact with surfaces that hot has caught fire."),
            Invariant($"Give 0 to {LongContactCelsius:0} °C; or take it on yourself with \"override\" in the box, in your own words, up to {CutOutCelsius:0} °C."));
    }

    /// <summary>Whether a plan goes above a limit and so lives by its override.</summary>
    public static bool IsExceeded(BoxPlan plan) => plan.Stages.Any(stage => stage.Celsius > LongContactCelsius);

    private static string AirOf(double celsius, double band) => celsius > CutOutCelsius
        ? Invariant($"{celsius:0.#} °C")
        : Invariant($"{celsius:0.#} °C and half the thermostat's band of {band:0.#} K");
}
