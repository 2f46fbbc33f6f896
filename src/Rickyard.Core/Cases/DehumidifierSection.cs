using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads a machine that condenses water out of the box.</summary>
internal static class DehumidifierSection
{
    private const double PintsPerDay = 0.473176473 / 86_400;

    public static BoxDehumidifier? Read(CaseObject box, CaseFindings findings)
    {
        if (box.Group("dehumidifier", "capacity", "efficiency", "humidity") is not { } machine) return null;
        var capacity = machine.NeededQuantity("capacity", BoxLimits.DehumidifierCapacity) ?? PintsPerDay;
        var usual = LabelMinimum(capacity / PintsPerDay);
        var efficiency = machine.QuantityOr("efficiency", BoxLimits.DehumidifierEfficiency, usual, Invariant($"What the dehumidifier takes out for its electricity was not given: {usual:0.##} L/kWh (label minimum of its size, ENERGY STAR dehumidifiers version 5.0)."));
        if (!machine.Has("humidity")) findings.Assume("The dehumidifier runs all the time: no humidity was given about which it does.");
        return new(capacity, efficiency, machine.Quantity("humidity", BoxLimits.HumidityLimit));
    }

    // ENERGY STAR dehumidifiers version 5.0, litres per kWh at 65 °F and 60 % relative humidity; rounded, so that "25 pints/day" is 25.
    private static double LabelMinimum(double pintsPerDay) => Math.Round(pintsPerDay, 3) switch { <= 25 => 1.57, <= 50 => 1.80, _ => 3.30 };
}
