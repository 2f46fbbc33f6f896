using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>
/// Heat of a box over a step as a function of its air temperature, vapour settled with it: what would be lost beyond what comes in (physics.md, eq. B1). Only to find the
/// air that the charge meets: <see cref="HeatBooks"/> then books the heat itself.
/// </summary>
/// <param name="Flows">Of the box.</param>
/// <param name="Before">At the start of the step.</param>
/// <param name="Outside">Over the step.</param>
/// <param name="Setting">Of the stage.</param>
/// <param name="Step">[s]</param>
/// <param name="WallFilm">[W m⁻² K⁻¹]</param>
/// <param name="Caught">Part of the heater's heat that shines on wood and so passes the air by.</param>
/// <param name="Charge">How the charge answers to its air.</param>
internal readonly record struct HeatBalance(
    BoxFlows Flows, BoxAir Before, Outside Outside, BoxSetting Setting, double Step, double WallFilm, double Caught, ChargeResponse Charge) : IRising
{
    private const double Reach = 40;

    /// <summary>Temperature and vapour pressure at which both balances close. [K], [Pa]</summary>
    internal (double Kelvins, double Vapor) Solve()
    {
        var kelvins = Bracketed.Zero(Charge.AtKelvins - Reach, Charge.AtKelvins + Reach, 1e-4, this);
        return (kelvins, VaporAt(kelvins, WallKelvins(kelvins)).Solve());
    }

    /// <inheritdoc/>
    public double At(double x)
    {
        var wall = WallKelvins(x);
        var balance = VaporAt(x, wall);
        var vapor = balance.Solve();
        var exchange = balance.Exchange(vapor);
        var capacity = Psychrometrics.HeatCapacity(exchange.RatioOut);
        var heater = (1 - Caught) * Flows.Heater(x, Setting.SetKelvins);
        var gained = heater + Flows.Box.Fan.Power + Flows.Sun(Outside) + exchange.DehumidifierPower + exchange.Dehumidified * LatentHeat.OfEvaporation(x);
        var stored = Before.DryAir * capacity * (x - Before.Kelvins) / Step;
        return stored + exchange.In * capacity * (x - Outside.Kelvins) + Flows.Box.WallArea * WallFilm * (x - wall) + Charge.HeatAt(x, vapor, wall) - gained;
    }

    /// <summary>Temperature of the walls at the end of the step beside air of a temperature. [K]</summary>
    internal double WallKelvins(double kelvins)
    {
        double stores = Flows.Box.WallArea * Flows.Box.WallHeatCapacity / Step, film = Flows.Box.WallArea * WallFilm;
        var wood = Charge.ToWallsKelvins + Charge.ToWallsByAir * (kelvins - Charge.AtKelvins) - Charge.ToWallsByWall * Charge.AtWall;
        return (stores * Before.WallKelvins + film * kelvins + wood + Flows.WallLoss * Outside.Kelvins)
            / (stores + film + Charge.ToWalls - Charge.ToWallsByWall + Flows.WallLoss);
    }

    private VaporBalance VaporAt(double kelvins, double wall) => new(
        Flows, Before, Outside, Setting, Step, kelvins, WallFilm, Charge.VaporAt(kelvins, Charge.AtVapor, wall), Charge.VaporByVapor, Charge.AtVapor);
}
