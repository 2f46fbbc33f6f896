using Rickyard.Core.Cases;

namespace Rickyard.Dry;

/// <summary>What can go wrong where wood is dried in hot or closed air; said where such air is in the case.</summary>
internal static class Cautions
{
    private const double HotCelsius = 40;

    public static IReadOnlyList<string> For(DryingCase drying) => drying.Periods.Any(IsHot) ? Hot : [];

    private static readonly IReadOnlyList<string> Hot =
    [
        "Fire: warm dry wood, bark and dust catch fire easily. Keep them clear of anything that glows or runs hot, fit an over-temperature cut-out that works by itself besides the thermostat, keep an extinguisher at hand, and do not leave the box alone until it has run safely under your eyes.",
        "Carbon monoxide: never heat a closed space with charcoal, a fuel burner or an open flame, and never dry wood in a cooker's afterheat indoors; have a carbon monoxide alarm that works.",
        "Electricity: the vapour of the wood condenses. Use equipment made for damp places, earthed and behind a residual-current (ground-fault) device, with cables and fan rated for the heat.",
        "Heat: air and metal from about 50 °C up burn skin; let the box cool and vent before reaching in.",
        "The appliance's instructions, local codes and a licensed electrician or fitter come before anything said here.",
    ];

    private static bool IsHot(Period period) => period switch
    {
        SteadyPeriod steady => steady.InBox || steady.Celsius >= HotCelsius,
        RestPeriod rest => rest.Celsius >= HotCelsius,
        _ => false,
    };
}
