using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>
/// Heat of a box over a step as a function of its air temperature, vapour settled with it: what would be lost beyond what comes in (physics.md, eq. B1). Only to find the
/// air that the charge meets: <see cref="HeatBooks"/> then books the heat itself.
/// </summary>
internal readonly record struct HeatBalance(BoxFlows Flows, BoxAir Before, Outside Outside, BoxSetting Setting, double Step, double WallFilm, ChargeResponse Charge) : IRising
{
    private const double Reach = 40;

    /// <summary>Temperature and vapour pressure at which both balances close. [K], [Pa]</summary>
    internal (double Kelvins, double Vapor) Solve()
    {
        var kelvins = Bracketed.Zero(Charge.AtKelvins - Reach, Charge.AtKelvins + Reach, 1e-4, this);
        return (kelvins, VaporAt(kelvins).Solve());
    }

    /// <inheritdoc/>
    public double At(double x)
    {
        var balance = VaporAt(x);
        var vapor = balance.Solve();
        var exchange = balance.Exchange(vapor);
        var capacity = Psychrometrics.HeatCapacity(exchange.RatioOut);
        var heater = (1 - Flows.Box.Heater.RadiantShare) * Flows.Heater(x, Setting.SetKelvins);
        var gained = heater + Flows.Box.Fan.Power + Flows.Sun(Outside) + exchange.DehumidifierPower + exchange.Dehumidified * LatentHeat.OfEvaporation(x);
        var stored = Before.DryAir * capacity * (x - Before.Kelvins) / Step;
        return stored + exchange.In * capacity * (x - Outside.Kelvins) + Wall(x) + Charge.HeatAt(x, vapor) - gained;
    }

    /// <summary>Temperature of the walls at the end of the step beside air of a temperature. [K]</summary>
    internal double WallKelvins(double kelvins)
    {
        double stores = Flows.Box.WallArea * Flows.Box.WallHeatCapacity / Step, film = Flows.Box.WallArea * WallFilm;
        return (stores * Before.WallKelvins + film * kelvins + Charge.ToWallsKelvins + Flows.WallLoss * Outside.Kelvins)
            / (stores + film + Charge.ToWalls + Flows.WallLoss);
    }

    private double Wall(double kelvins) => Flows.Box.WallArea * WallFilm * (kelvins - WallKelvins(kelvins));

    private VaporBalance VaporAt(double kelvins) => new(
        Flows, Before, Outside, Setting, Step, kelvins, WallFilm, Charge.VaporAt(kelvins, Charge.AtVapor), Charge.VaporByVapor, Charge.AtVapor);
}
