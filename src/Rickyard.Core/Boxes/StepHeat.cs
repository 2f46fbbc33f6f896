namespace Rickyard.Core.Boxes;

/// <summary>Heat and water flows of a box over one step. All heats in W.</summary>
/// <param name="Exchange">Air and water through openings and on surfaces.</param>
/// <param name="Heater">From the heater.</param>
/// <param name="Fan">From the fan.</param>
/// <param name="Sun">From the sun.</param>
/// <param name="ToCharge">Taken by the charge.</param>
/// <param name="ToWalls">Taken by the walls, condensing vapour included.</param>
/// <param name="OnWalls">Of that, from condensing vapour.</param>
/// <param name="Returned">Given back by vapour that the dehumidifier took out or that ran off the wood as dew.</param>
/// <param name="ThroughWalls">Lost outside.</param>
/// <param name="AirIn">Heat content of air let in.</param>
/// <param name="AirOut">Of air that leaves.</param>
/// <param name="Drained">Of water that drips off or is taken out.</param>
/// <param name="DripOfWood">Dew that runs off the wood. [kg s⁻¹]</param>
/// <param name="AirKelvins">Temperature the air comes to. [K]</param>
/// <param name="WallKelvins">Temperature the walls come to. [K]</param>
internal readonly record struct StepHeat(
    BoxExchange Exchange, double Heater, double Fan, double Sun, double ToCharge, double ToWalls, double OnWalls, double Returned, double ThroughWalls, double AirIn,
    double AirOut, double Drained, double DripOfWood, double AirKelvins, double WallKelvins);
