namespace Rickyard.Core.Boxes;

/// <summary>What passes the openings and surfaces of a box over a step.</summary>
/// <param name="In">Dry air let in. [kg s⁻¹]</param>
/// <param name="Out">Dry air that leaves. [kg s⁻¹]</param>
/// <param name="RatioIn">Vapour over dry air of what comes in.</param>
/// <param name="RatioOut">Of what leaves: the air at the end of the step.</param>
/// <param name="OnWalls">Condensing on walls and dripping off. [kg s⁻¹]</param>
/// <param name="Dehumidified">Taken out by the dehumidifier. [kg s⁻¹]</param>
/// <param name="DehumidifierPower">Its electricity. [W]</param>
internal readonly record struct BoxExchange(
    double In, double Out, double RatioIn, double RatioOut, double OnWalls, double Dehumidified, double DehumidifierPower)
{
    /// <summary>Vapour the air gains by all this. [kg s⁻¹]</summary>
    internal double VaporGain => In * RatioIn - Out * RatioOut - OnWalls - Dehumidified;
}
