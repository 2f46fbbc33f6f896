using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Tables;
using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Core.Boxes;

/// <summary>
/// The kiln handbooks' way to even out a charge (Wengert, Drying Oak Lumber, step 6C; AH-188), and the air it needs (physics.md, T3 and T4). Written for lumber of
/// 5 to 11 %; firewood of 19 % only borrows the rule.
/// </summary>
public static class Equalizing
{
    /// <summary>Below the target for hardwoods: start and kiln EMC. [kg kg⁻¹]</summary>
    public const double HardwoodBelow = 0.02;

    /// <summary>The same for softwoods and lower-grade hardwoods, and for all woods by the other published rule (FPL-GTR-57, appendix A). [kg kg⁻¹]</summary>
    public const double SoftwoodBelow = 0.03;

    private const double ConditioningAboveHardwood = 0.04, ConditioningAboveSoftwood = 0.03;
    private const string TableName = "Boxes/equalizing_table";
    private static readonly IReadOnlyList<EqualizingRule> Hardwoods = Load("conditioning_hardwood");

    /// <summary>The printed table for hardwoods, targets of 5 to 11 %.</summary>
    public static IReadOnlyList<EqualizingRule> Table => Hardwoods;

    /// <summary>The rule for a target: as printed, else carried beyond by the same steps.</summary>
    /// <param name="target">Above 0.03. [kg kg⁻¹]</param>
    /// <param name="softwood">Whether to take the steps of softwoods.</param>
    public static EqualizingRule For(double target, bool softwood = false)
    {
        var below = softwood ? SoftwoodBelow : HardwoodBelow;
        if (!(target > below)) throw new ArgumentOutOfRangeException(nameof(target), target, "The target must be above the step that is taken off it.");
        var printed = softwood ? null : Hardwoods.FirstOrDefault(rule => Math.Abs(rule.Target - target) < 1e-9);
        return printed ?? new(target, target - below, target - below, target, target + (softwood ? ConditioningAboveSoftwood : ConditioningAboveHardwood), false);
    }

    /// <summary>The air that keeps wood at a moisture; a problem where no air can, since even saturated air leaves hot wood drier.</summary>
    /// <param name="emc">The moisture, above 0. [kg kg⁻¹]</param>
    /// <param name="celsius">Dry bulb, below boiling. [°C]</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    /// <param name="field">Where the moisture came from, for the message.</param>
    public static Result<EqualizingAir> AirFor(double emc, double celsius, double pressure, string field = "equalizing")
    {
        var isotherm = SorptionIsotherm.At(celsius);
        if (emc >= isotherm.Saturation)
            return ResultOf.Failure<EqualizingAir>(
                field,
                Invariant($"No air of {celsius:0.#} °C keeps wood at {100 * emc:0.#} % dry basis: even saturated air leaves it at {100 * isotherm.Saturation:0.#} %."),
                Invariant($"Take a moisture below {100 * isotherm.Saturation:0.#} % or cooler air."));
        var kelvins = celsius + Temperature.IcePointKelvins;
        var humidity = isotherm.Activity(emc);
        var vapor = humidity * SaturationPressure.OverWater(kelvins);
        if (vapor >= pressure) return TooHot(emc, celsius, field);
        var ratio = Psychrometrics.HumidityRatio(vapor, pressure);
        return ResultOf.Success(new EqualizingAir(celsius, humidity, Psychrometrics.WetBulb(kelvins, ratio, pressure) - Temperature.IcePointKelvins, ratio));
    }

    /// <summary>The moisture at which air of a dry and a wet bulb keeps wood. [kg kg⁻¹]</summary>
    /// <param name="celsius">Dry bulb. [°C]</param>
    /// <param name="wetBulbCelsius">Wet bulb, possible at that dry bulb. [°C]</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public static double EmcOf(double celsius, double wetBulbCelsius, double pressure)
    {
        double kelvins = celsius + Temperature.IcePointKelvins, ratio = Psychrometrics.HumidityRatioFromWetBulb(kelvins, wetBulbCelsius + Temperature.IcePointKelvins, pressure);
        var humidity = Psychrometrics.VaporPressure(ratio, pressure) / SaturationPressure.OverWater(kelvins);
        return SorptionIsotherm.At(celsius).Moisture(Math.Clamp(humidity, 0, 1));
    }

    private static Result<EqualizingAir> TooHot(double emc, double celsius, string field) => ResultOf.Failure<EqualizingAir>(
        field,
        Invariant($"At {celsius:0.#} °C wood stays at {100 * emc:0.#} % dry basis only in vapour that presses more than the whole air does."),
        "Take cooler air or a lower moisture.");

    private static List<EqualizingRule> Load(string conditioning) => [.. DataRow.Read(TableName).Select(row => Rule(row, conditioning))];

    private static EqualizingRule Rule(DataRow row, string conditioning)
    {
        double Part(string column) => row.Number(column) / 100;
        return new(Part("target"), Part("start_driest"), Part("kiln_emc"), Part("stop_wettest"), Part(conditioning), true);
    }
}
