using static System.FormattableString;

namespace Rickyard.Core.Boxes.Safety;

/// <summary>What can go wrong with a hot box, said where the risk is in the plan; limits with their source, practice marked as such.</summary>
public static class BoxCautions
{
    /// <summary>Every caution that the plan calls for, gravest first, each a sentence or a few; the last defers to those who know the place.</summary>
    public static IReadOnlyList<string> For(BoxPlan plan)
    {
        var risks = new PlanRisks(plan);
        return [.. All(risks).Where(caution => caution.Applies).Select(caution => caution.Words)];
    }

    /// <summary>What must stay visible on everything printed when a plan goes above a safety limit by the user's own words; null where it does not.</summary>
    public static string? Override(BoxPlan plan)
    {
        if (plan.Override is not { } reason || !SafetyLimits.IsExceeded(plan)) return null;
        var hottest = plan.Stages.Max(stage => stage.Celsius ?? double.MinValue);
        return Invariant($"Above a safety limit by the user's own decision: air set to {hottest:0.#} °C; from {SafetyLimits.LongContactCelsius:0} °C (170 °F) up, wood in long contact with hot surfaces has caught fire. Their words: \"{OneLine(reason)}\"");
    }

    private static IEnumerable<(bool Applies, string Words)> All(PlanRisks risks) =>
    [
        (risks.Heated, Fire),
        (risks.Heated, CutOut),
        (risks.HeatNeedsFan, FanFails),
        (risks.Heated, LongContact),
        (risks.Heated, Unattended),
        (risks.Heated, DryCharge),
        (risks.Heated, AfterShutdown),
        (risks.Burns, Burner),
        (risks.Heated && !risks.Burns, NoBurner),
        (risks.ElectricWatts > 0, Load(risks.ElectricWatts)),
        (risks.ElectricWatts > 0, Damp),
        (risks.MachineTooHot, Machine),
        (risks.Glazed, Sun),
        (risks.Scalds, Opening),
        (risks.HotRest, Bin),
        (risks.MayHoldFood, Food),
        (true, Others),
    ];

    private const string Fire =
        "Fire: no split, bark or dust may touch the element, fall on it or lie against the wall it heats. Fix a guard, keep the clearance its instructions ask for, and sweep before every run.";

    private const string LongContact =
        "Long contact: surfaces from 77 °C (170 °F) up have set wood on fire after long times (Babrauskas, Gray and Janssens 2007). An element, its guard and the wall behind it are hotter than the air.";

    private const string FanFails = "Fan: the heater must go off by itself when the fan stops.";

    private const string Unattended =
        "Watching: never leave it running unattended beyond what the appliance's instructions allow; watch the whole first run. Have a smoke alarm that wakes you and an extinguisher at hand.";

    private const string DryCharge =
        "Place: a dry charge burns all at once, and gaps between splits feed the fire. Keep the box away from house, fence and stored wood (a firewood kiln and ten cords were lost in one night in Maine in 2021).";

    private const string AfterShutdown =
        "After shutdown: never move a hot charge under a roof; let it cool in the open and look after it for hours (in New York in 2020 dried wood caught fire in a barn 6 to 7 hours after the heater was off).";

    private const string Burner =
        "Carbon monoxide: the burner stands outside, its fumes are led away, and neither flame nor ember meets the air of the box; never a fuel burner indoors. Have an alarm that works: 35 ppm is the most over a working day, 200 ppm the most at any time (NIOSH); leave at 200.";

    private const string NoBurner =
        "Carbon monoxide: never help the heater with charcoal, a fuel burner or an open flame, and never in a room; have an alarm that works (35 ppm is the most over a working day, 200 ppm the most at any time: NIOSH).";

    private const string Damp =
        "Damp: the wood's vapour condenses. Use equipment made for damp and heat, earthed and behind a residual-current (ground-fault) device.";

    private const string Machine =
        "Dehumidifier: one made for rooms is not made for air much above 35 °C (common practice, no source); set it outside with ducts, or use one built for hot air.";

    private const string Sun =
        "Sun: glazing heats an empty or dried-out box without a thermostat. Fit a vent that opens by itself and a cover, and keep lenses, mirrors and anything that could focus the sun away.";

    private const string Opening =
        "Opening: hot humid air scalds, and metal from about 50 °C up burns skin. Switch off, open a hand's breadth from the side, wait, then reach in with gloves.";

    private const string Bin = "Closed rest: rest hot splits in the box itself or in a metal bin with a metal lid on a floor that cannot burn; never in a plastic bin or a room.";

    private const string Food =
        "Food: wood brings soil, insects, mould and splinters. Keep the box for wood alone and label it; a cabinet that is to hold food again is first cleaned, rinsed, sanitised and inspected (food code, common practice). Never both in one run; a food listing says nothing of wood inside.";

    private const string Others = "The appliance's instructions, local codes, and a licensed electrician or gas fitter come before anything said here.";

    private static readonly string CutOut =
        Invariant($"Cut-out: fit one of its own besides the thermostat that switches the heater off at {SafetyLimits.CutOutCelsius:0} °C (200 °F) or lower and stays off until reset by hand; try it before the first run.");

    private static string Load(double watts) => watts > SafetyLimits.CircuitWatts
        ? Invariant($"Electrical load: {watts:0} W is more than a usual plug carries for hours (80 % of 15 A at 120 V is {SafetyLimits.CircuitWatts:0} W; common practice, local code decides). It needs a circuit of its own, laid by an electrician; no extension cord.")
        : Invariant($"Electrical load: {watts:0} W for days. Plug it straight into a wall outlet with nothing else on the circuit, no extension cord, and feel plug and cable in the first hours.");

    private static string OneLine(string words) => string.Concat(words.Select(letter => char.IsControl(letter) ? ' ' : letter));
}
