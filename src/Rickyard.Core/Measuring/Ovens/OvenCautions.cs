namespace Rickyard.Core.Measuring.Ovens;

/// <summary>What can go wrong while wood is dried hot in a kitchen or a workshop.</summary>
public static class OvenCautions
{
    /// <summary>Worst first.</summary>
    public static IReadOnlyList<string> For(Appliance appliance) =>
    [
        "Fire: never leave it alone while it heats; dry wood can smoulder and catch fire, even after it is out. Keep an extinguisher or water at hand.",
        appliance == Appliance.Microwave
            ? "Smoke: stop at once, keep the door shut until it is out, unplug it, quench the sample, throw it away and start again with less power. A charred sample reads too wet."
            : "Smoke or a burnt smell: switch off, keep the door shut, quench the sample when it is safe, throw it away and start again cooler. A charred sample reads too wet.",
        "Ventilate the room: hot wood gives off vapours; do not dry wood beside food.",
        "The appliance's instructions come before anything said here; where they forbid it, do not dry wood in it.",
    ];
}
