using Rickyard.Core.Boxes;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>What a run of a box took, by use, by kilogram of water and in money, beside published figures.</summary>
internal static class EnergySentences
{
    private const double LeastWater = 0.01;

    public static IEnumerable<string> Of(ChargeRun charge) => [Bought(charge), Uses(charge.Use), .. Beside(charge)];

    /// <summary>Energy bought for each kilogram of water that left; null where hardly any did. [kWh kg⁻¹]</summary>
    public static double? PerKilogram(ChargeRun charge)
    {
        var water = charge.Series.WaterKilograms[^1];
        return water >= LeastWater ? Kilowatthours(charge.Series.EnergyJoules[^1]) / water : null;
    }

    /// <summary>[kWh]</summary>
    public static double Kilowatthours(double joules) => joules / EnergyCost.JoulesPerKilowattHour;

    private static string Bought(ChargeRun charge)
    {
        var water = charge.Series.WaterKilograms[^1];
        var each = PerKilogram(charge) is { } perKilogram ? Invariant($", {perKilogram:0.0} kWh for each of the {water:0.0} kg of water it took off") : "; it took hardly any water off";
        return Invariant($"Energy: {Kilowatthours(charge.Series.EnergyJoules[^1]):0} kWh bought{each}. {Cost(charge)}");
    }

    private static string Cost(ChargeRun charge)
    {
        if (charge.Plan.Price is not { } price) return "What that costs is not told, for the case has no tariff.";
        return EnergyCost.Of(charge) is { } cost ? $"That costs {price.Write(cost)}." : "What that costs is not told, for the tariff lacks a price of what the box burns or draws.";
    }

    private static string Uses(EnergyUse use)
    {
        var total = use.Water + use.Wood + use.Walls + use.Vent;
        var parts = new[] { ("to warm and evaporate the water", use.Water), ("to warm the wood", use.Wood), ("through and into the walls", use.Walls), ("with the fresh air", use.Vent) };
        var went = parts.Select(part => Invariant($"{Kilowatthours(part.Item2):0.0} kWh {part.Item1}{(total > 0 ? $" ({Say.Share(part.Item2 / total)})" : "")}"));
        var came = new[] { ("heater", use.Heater), ("fan", use.Fan), ("dehumidifier", use.Dehumidifier), ("sun", use.Sun) }.Where(part => part.Item2 > 0)
            .Select(part => Invariant($"{part.Item1} {Kilowatthours(part.Item2):0.0}"));
        return $"Where the heat went: {string.Join(", ", went)}. It came from: {string.Join(", ", came.DefaultIfEmpty("nowhere"))} kWh.";
    }

    private static IEnumerable<string> Beside(ChargeRun charge)
    {
        if (PerKilogram(charge) is not { } own) return [];
        var published = KilnFigures.All.Select(figure => Invariant($"{figure.Subject} {figure.Low:0.0#}{(figure.High > figure.Low ? Invariant($"–{figure.High:0.0#}") : "")}"));
        return [$"Published, kWh for each kg of water: {string.Join("; ", published)}. {Verdict(own)}"];
    }

    private static string Verdict(double own) => own switch
    {
        _ when own > KilnFigures.Kilns.High => Invariant($"This box takes {own / KilnFigures.BatchFirewoodKiln.Low:0.0} times the batch kiln: a small box with thin walls that runs for days loses heat every hour, while the wood gives less and less water."),
        _ when own < KilnFigures.Evaporation.Low => "This box takes less than the evaporation alone: the sun, the air outside or a dehumidifier gave the rest.",
        _ => "This box is within what kilns take.",
    };
}
