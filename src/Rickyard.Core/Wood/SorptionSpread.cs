using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>Equilibrium moisture with its hysteresis.</summary>
/// <param name="Adsorption">Where drier wood stops wetting.</param>
/// <param name="Mean">On the isotherm, between both.</param>
/// <param name="Desorption">Where wetter wood stops drying.</param>
public sealed record SorptionSpread(MoistureContent Adsorption, MoistureContent Mean, MoistureContent Desorption);
