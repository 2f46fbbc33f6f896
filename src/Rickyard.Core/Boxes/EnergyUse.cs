namespace Rickyard.Core.Boxes;

/// <summary>Where the heat of a run went; the uses add up to what came in. [J]</summary>
/// <param name="Water">Warming and evaporating the water that left, sorption included; less what vapour gave back that a dehumidifier took out or that ran off the wood as dew.</param>
/// <param name="Wood">Warming the wood and the water still in it.</param>
/// <param name="Walls">Through walls and glazing, and stored in them, beyond what vapour condensing on them gave.</param>
/// <param name="Vent">Warming the air that was let in, by vent and leaks.</param>
/// <param name="Heater">In: from the heater.</param>
/// <param name="Fan">In: from the fan.</param>
/// <param name="Dehumidifier">In: electricity of the dehumidifier; the heat of what it condenses is given back under <paramref name="Water"/>.</param>
/// <param name="Sun">In: from the sun.</param>
public sealed record EnergyUse(
    double Water, double Wood, double Walls, double Vent, double Heater, double Fan, double Dehumidifier, double Sun);
