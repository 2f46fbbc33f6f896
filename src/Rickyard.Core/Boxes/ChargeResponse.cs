namespace Rickyard.Core.Boxes;

/// <summary>How all classes in a box together answer to its air over a step, to first order about a state of it; sums over all pieces.</summary>
internal struct ChargeResponse
{
    /// <summary>State of air and walls about which it holds. [K], [Pa], [K]</summary>
    internal double AtKelvins, AtVapor, AtWall;

    /// <summary>Vapour given off, and its derivatives. [kg s⁻¹], [kg s⁻¹ K⁻¹], [kg s⁻¹ K⁻¹], [kg s⁻¹ Pa⁻¹]</summary>
    internal double Vapor, VaporByAir, VaporByWall, VaporByVapor;

    /// <summary>Heat taken from the air by convection, and its derivatives. [W], [W K⁻¹], [W K⁻¹], [W Pa⁻¹]</summary>
    internal double Heat, HeatByAir, HeatByWall, HeatByVapor;

    /// <summary>Radiation between walls and wood, the same times the temperature of the wood, and that by temperature of air and walls. [W K⁻¹], [W], [W K⁻¹], [W K⁻¹]</summary>
    internal double ToWalls, ToWallsKelvins, ToWallsByAir, ToWallsByWall;

    /// <summary>Dew that runs off the wood, at least 0. [kg s⁻¹]</summary>
    internal double Drip;

    /// <summary>Vapour given off beside other air and walls. [kg s⁻¹]</summary>
    internal readonly double VaporAt(double kelvins, double vapor, double wall) =>
        Vapor + VaporByAir * (kelvins - AtKelvins) + VaporByWall * (wall - AtWall) + VaporByVapor * (vapor - AtVapor);

    /// <summary>Heat taken from other air beside other walls. [W]</summary>
    internal readonly double HeatAt(double kelvins, double vapor, double wall) =>
        Heat + HeatByAir * (kelvins - AtKelvins) + HeatByWall * (wall - AtWall) + HeatByVapor * (vapor - AtVapor);
}
