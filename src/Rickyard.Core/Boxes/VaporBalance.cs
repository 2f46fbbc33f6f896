using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>
/// Vapour of a box over a step as a function of its vapour pressure at the end: what would be too much (physics.md, eq. B2). Total pressure stays that of outside, so what
/// the air gains in volume leaves, and what it loses is drawn in.
/// </summary>
/// <param name="Flows">Of the box.</param>
/// <param name="Before">At the start of the step.</param>
/// <param name="Outside">Over the step.</param>
/// <param name="Setting">Of the stage.</param>
/// <param name="Step">[s]</param>
/// <param name="Kelvins">Of the air at the end. [K]</param>
/// <param name="WallFilm">[W m⁻² K⁻¹]</param>
/// <param name="Given">What the charge gives off at <paramref name="AtVapor"/>, dew on it taken away. [kg s⁻¹]</param>
/// <param name="GivenByVapor">Its derivative by vapour pressure, at most 0. [kg s⁻¹ Pa⁻¹]</param>
/// <param name="AtVapor">[Pa]</param>
internal readonly record struct VaporBalance(
    BoxFlows Flows, BoxAir Before, Outside Outside, BoxSetting Setting, double Step, double Kelvins, double WallFilm, double Given, double GivenByVapor, double AtVapor) : IRising
{
    /// <summary>The vapour pressure at which it closes. [Pa]</summary>
    internal double Solve()
    {
        var most = 0.98 * Flows.Pressure;
        return Bracketed.Zero(0, most, 1e-6, this);
    }

    /// <inheritdoc/>
    public double At(double x)
    {
        var exchange = Exchange(x);
        return (BoxAir.VaporIn(Flows.Box.Volume, Kelvins, x) - Before.Vapor) / Step - exchange.VaporGain - Given - GivenByVapor * (x - AtVapor);
    }

    /// <summary>What passes the box's openings and surfaces at a vapour pressure.</summary>
    internal BoxExchange Exchange(double vapor)
    {
        var dry = BoxAir.DryAirIn(Flows.Box.Volume, Kelvins, vapor, Flows.Pressure);
        double let = Flows.FreshAir(Kelvins, vapor, Outside, Setting), leaving = let + (Before.DryAir - dry) / Step;
        if (leaving < 0) (let, leaving) = (let - leaving, 0);
        var (water, power) = Flows.Dehumidified(Kelvins, vapor);
        return new(
            let, leaving, Psychrometrics.HumidityRatio(Outside.VaporPressure, Flows.Pressure), Psychrometrics.HumidityRatio(vapor, Flows.Pressure),
            Flows.OnWalls(Kelvins, vapor, Before.WallKelvins, WallFilm), water, power);
    }
}
