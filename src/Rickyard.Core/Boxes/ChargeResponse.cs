namespace Rickyard.Core.Boxes;

/// <summary>How all classes in a box together answer to its air over a step, to first order about a state of it; sums over all pieces.</summary>
internal struct ChargeResponse
{
    /// <summary>State of the box's air about which it holds. [K], [Pa]</summary>
    internal double AtKelvins, AtVapor;

    /// <summary>Vapour given off, and its derivatives. [kg s⁻¹], [kg s⁻¹ K⁻¹], [kg s⁻¹ Pa⁻¹]</summary>
    internal double Vapor, VaporByAir, VaporByVapor;

    /// <summary>Heat taken from the air by convection, and its derivatives. [W], [W K⁻¹], [W Pa⁻¹]</summary>
    internal double Heat, HeatByAir, HeatByVapor;

    /// <summary>Radiation between walls and wood, and the same times the temperature of the wood. [W K⁻¹], [W]</summary>
    internal double ToWalls, ToWallsKelvins;

    /// <summary>Dew that runs off the wood, at least 0. [kg s⁻¹]</summary>
    internal double Drip;

    /// <summary>Vapour given off in other air. [kg s⁻¹]</summary>
    internal readonly double VaporAt(double kelvins, double vapor) => Vapor + VaporByAir * (kelvins - AtKelvins) + VaporByVapor * (vapor - AtVapor);

    /// <summary>Heat taken in other air. [W]</summary>
    internal readonly double HeatAt(double kelvins, double vapor) => Heat + HeatByAir * (kelvins - AtKelvins) + HeatByVapor * (vapor - AtVapor);
}
