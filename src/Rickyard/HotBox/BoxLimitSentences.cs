using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>What holds a box back at every stage, and the one change that would help most.</summary>
internal static class BoxLimitSentences
{
    /// <summary>Longest first stretch of a stage that counts as warming up (judgement). [d]</summary>
    private const double WarmingUp = 1;

    /// <summary>A sentence or two for each stretch.</summary>
    public static IEnumerable<string> Of(ChargeRun charge) => charge.Limits.Select(limit => $"{Head(charge, limit)}: {What(charge, limit)} {Change(charge, limit)}");

    /// <summary>The one change that would help most.</summary>
    public static string Change(ChargeRun charge, StageLimit limit) => limit.Limit switch
    {
        BoxLimit.Heater when IsWarmingUp(charge, limit) => "That passes by itself; more power would shorten it.",
        BoxLimit.Heater => Heat(charge.Use),
        BoxLimit.Vapor when charge.Plan.Box.Dehumidifier is not null => "A dehumidifier that takes out more would help most, or some fresh air.",
        BoxLimit.Vapor => "A larger vent, or one that opens at a lower humidity, would help most, as long as the heater holds.",
        BoxLimit.Surface => "A faster fan or looser packing would help most.",
        BoxLimit.Inside => Invariant($"Finer splits would help most, for the time inside goes about with the square of the thickness; else patience. A warmer box helps only up to its limit of {SafetyLimits.LongContactCelsius:0} °C, and fan or vent would do little."),
        _ when IsClosed(charge, limit) => "Only warmth and time even it out; opening it would dry the shells on.",
        _ => "Only drier or warmer air would take more.",
    };

    private static string Head(ChargeRun charge, StageLimit limit) =>
        Invariant($"Stage {limit.Stage + 1}, {StageWords.Of(charge.Plan.Stages[limit.Stage])}, day {limit.FromDay:0.0} to {limit.ToDay:0.0}");

    private static string What(ChargeRun charge, StageLimit limit) => limit.Limit switch
    {
        BoxLimit.Heater when IsWarmingUp(charge, limit) => Invariant($"it is warming up; the air is {limit.Shortfall:0} K below its setting on average."),
        BoxLimit.Heater => Invariant($"the heater cannot hold the temperature; the air is {limit.Shortfall:0} K below its setting."),
        BoxLimit.Vapor => $"the air is full of vapour; {Say.Share(limit.VaporShare)} of the drop in vapour pressure from the core to the air outside lies between the box and outside.",
        BoxLimit.Surface => $"the air does not reach the faces well enough; {Say.Share(limit.SurfaceShare)} of the drop in vapour pressure lies at the surface.",
        BoxLimit.Inside => $"the way out through the wood holds it back; {Say.Share(limit.InsideShare)} of the drop in vapour pressure lies inside.",
        _ => "nothing holds it back, for hardly any water leaves.",
    };

    // The largest use says where the heat goes that the air does not get.
    private static string Heat(EnergyUse use)
    {
        var most = Math.Max(Math.Max(use.Walls, use.Vent), use.Water + use.Wood);
        if (most == use.Walls) return "Insulation would help most, for the walls take most of the heat; else more power.";
        return most == use.Vent
            ? "A smaller vent, or one that opens at a higher humidity, would help most, for the fresh air takes most of the heat; else more power."
            : "More power or a smaller charge would help most, for the wood and its water take most of the heat.";
    }

    /// <summary>Whether the heater only has to bring a new stage up to its setting, and then holds it.</summary>
    private static bool IsWarmingUp(ChargeRun charge, StageLimit limit) => limit.ToDay - limit.FromDay < WarmingUp
        && !charge.Limits.Any(earlier => earlier.Stage == limit.Stage && earlier.ToDay <= limit.FromDay)
        && charge.Limits.Any(later => later.Stage == limit.Stage && later.FromDay >= limit.ToDay);

    private static bool IsClosed(ChargeRun charge, StageLimit limit) => charge.Plan.Stages[limit.Stage].Kind == StageKind.ClosedRest;
}
