using Rickyard.Core.Boxes;

namespace Rickyard.Core.Cases;

/// <summary>Reads what heats a box.</summary>
internal static class HeaterSection
{
    private const double UsualBand = 3;
    private const double UsualRadiantShare = 0.10;
    private const double GasEfficiency = 0.80;

    private static readonly Dictionary<string, HeaterFuel> Fuels = new(StringComparer.OrdinalIgnoreCase)
    {
        ["electricity"] = HeaterFuel.Electricity, ["gas"] = HeaterFuel.Gas,
    };

    /// <summary>The heater; a box without one has a power of 0.</summary>
    public static BoxHeater Read(CaseObject box, CaseFindings findings)
    {
        if (!box.Has("heater")) findings.Assume("No heater was given: the box has none.");
        if (box.Group("heater", "power", "thermostat band", "radiant share", "fuel", "efficiency") is not { } heater) return new(0, UsualBand, 0, HeaterFuel.Electricity, 1);
        var power = heater.NeededQuantity("power", BoxLimits.HeaterPower) ?? 1000;
        var band = heater.QuantityOr("thermostat band", BoxLimits.ThermostatBand, UsualBand, "The thermostat's band was not given: 3 K from full power to none (judgement).");
        var radiant = heater.QuantityOr("radiant share", BoxLimits.RadiantShare, UsualRadiantShare, "How much of the heat shines on the wood was not given: 10 % (judgement).");
        var fuel = FuelOf(heater, findings);
        return new(power, band, radiant, fuel, EfficiencyOf(heater, fuel));
    }

    private static HeaterFuel FuelOf(CaseObject heater, CaseFindings findings)
    {
        if (!heater.Has("fuel")) findings.Assume("What the heater runs on was not given: electricity.");
        var fuel = heater.Choice("fuel", Fuels) ?? HeaterFuel.Electricity;
        if (fuel == HeaterFuel.Gas) findings.Assume("The gas burns outside the box; neither flame nor fumes come in.");
        return fuel;
    }

    private static double EfficiencyOf(CaseObject heater, HeaterFuel fuel) => fuel == HeaterFuel.Gas
        ? heater.QuantityOr("efficiency", BoxLimits.Efficiency, GasEfficiency, "How much of the gas becomes heat in the box was not given: 80 % (judgement).")
        : heater.Quantity("efficiency", BoxLimits.Efficiency) ?? 1;
}
