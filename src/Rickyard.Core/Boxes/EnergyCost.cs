namespace Rickyard.Core.Boxes;

/// <summary>What the energy of a box costs at the user's tariff.</summary>
public static class EnergyCost
{
    /// <summary>[J kWh⁻¹]</summary>
    public const double JoulesPerKilowattHour = 3.6e6;

    /// <summary>Cost of a run, or null where the price of something it bought was not said.</summary>
    public static double? Of(ChargeRun run)
    {
        if (run.Plan.Price is not { } price) return null;
        var heater = run.Use.Heater / run.Plan.Box.Heater.Efficiency;
        var burnsGas = run.Plan.Box.Heater.Fuel == HeaterFuel.Gas;
        return Times(run.Use.Fan + run.Use.Dehumidifier + (burnsGas ? 0 : heater), price.Electricity) + Times(burnsGas ? heater : 0, price.Gas);
    }

    /// <summary>Cost of other energy for the same box, in the proportion of electricity and gas that a run had; null where that is not known. Exact where all is electric.</summary>
    /// <param name="run">The run.</param>
    /// <param name="joules">Energy bought. [J]</param>
    public static double? Like(ChargeRun run, double joules) =>
        run.Series.EnergyJoules[^1] is > 0 and var bought && Of(run) is { } cost ? cost * joules / bought : null;

    private static double? Times(double joules, double? price) => joules > 0 ? joules / JoulesPerKilowattHour * price : 0;
}
