using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>
/// Heat of a box over a step whose water is already booked: finds the temperature of the air at which every flow of heat, each counted once and with the heat content of what
/// it carries, closes (physics.md, eq. B12). Air, walls and pieces are then given what was booked for them.
/// </summary>
internal sealed class HeatBooks(BoxFlows flows, IReadOnlyList<ChargeBody> bodies)
{
    private const int MostRounds = 60;
    private const double Close = 1e-8;
    private readonly BodyHeat[] _heats = new BodyHeat[bodies.Count];

    /// <summary>Heat of each class over the step closed last.</summary>
    internal ReadOnlySpan<BodyHeat> Heats => _heats;

    /// <summary>Close the step: Newton within a bracket, since a thermostat kinks the balance.</summary>
    /// <param name="step">[s]</param>
    /// <param name="context">What the step has settled so far.</param>
    internal StepHeat CloseStep(double step, in StepContext context)
    {
        double kelvins = context.Kelvins, wall = context.Before.WallKelvins, low = 150, high = 500;
        var heat = At(step, kelvins, context, ref wall, out var slope);
        for (var round = 0; round < MostRounds; round++)
        {
            var excess = Excess(step, kelvins, context, heat);
            if (excess > 0) high = kelvins; else low = kelvins;
            var next = kelvins - excess / slope;
            if (!(next >= low && next <= high)) next = (low + high) / 2;
            var moved = Math.Abs(next - kelvins);
            kelvins = next;
            heat = At(step, kelvins, context, ref wall, out slope);
            if (moved < Close) break;
        }

        return heat with { AirKelvins = AirAfter(step, context, heat) };
    }

    /// <summary>All flows with the air at a temperature and walls and pieces settled with it, and the slope of their excess by it.</summary>
    private StepHeat At(double step, double kelvins, in StepContext context, ref double wall, out double slope)
    {
        var charge = SettleWalls(step, kelvins, context, ref wall);
        var exchange = context.Exchange;
        var capacity = Psychrometrics.HeatCapacity(exchange.RatioOut);
        slope = (context.After.DryAir / step + exchange.Out) * capacity + charge.ByAir + HeaterSlope(kelvins, context);
        double wallFilm = flows.Box.WallArea * context.WallFilm, condensing = exchange.OnWalls * BoxHeat.OfCondensing(kelvins);
        return new(
            exchange, flows.Heater(kelvins, context.Setting.SetKelvins), flows.Box.Fan.Power, flows.Sun(context.Outside), charge.Taken,
            wallFilm * (kelvins - wall) + condensing - charge.FromWalls, condensing, (exchange.Dehumidified + context.DripOfWood) * BoxHeat.OfCondensing(kelvins),
            flows.WallLoss * (wall - context.Outside.Kelvins),
            exchange.In * BoxHeat.OfAir(context.Outside.Kelvins, exchange.RatioIn), exchange.Out * BoxHeat.OfAir(kelvins, exchange.RatioOut),
            (exchange.OnWalls + exchange.Dehumidified + context.DripOfWood) * BoxHeat.OfWater(kelvins),
            context.DripOfWood, kelvins, wall);
    }

    /// <summary>Walls and pieces settled beside air of a temperature: what the pieces take, of it from the walls, and how much more walls and pieces take per kelvin of the air. [W], [W], [W K⁻¹]</summary>
    private (double Taken, double FromWalls, double ByAir) SettleWalls(double step, double kelvins, in StepContext context, ref double wall)
    {
        double film = flows.Box.WallArea * context.WallFilm, loss = flows.WallLoss, stores = flows.Box.WallArea * flows.Box.WallHeatCapacity / step;
        var condensing = context.Exchange.OnWalls * BoxHeat.OfCondensing(kelvins);
        for (var round = 0; ; round++)
        {
            var sums = Charge(step, kelvins, wall, context);
            var excess = stores * (wall - context.Before.WallKelvins) + loss * (wall - context.Outside.Kelvins) - film * (kelvins - wall) - condensing + sums.FromWalls;
            double byWall = stores + loss + film + sums.ByWall, cross = film + sums.Cross, change = excess / byWall;
            if (Math.Abs(change) < Close || round >= MostRounds) return (sums.Taken, sums.FromWalls, film + sums.ByAir - cross * cross / byWall);
            wall -= change;
        }
    }

    /// <summary>What all pieces take beside air and walls of some temperatures; how much more of it per kelvin of the air, per kelvin of the walls, and less from either per kelvin of the other.</summary>
    private (double Taken, double FromWalls, double ByAir, double ByWall, double Cross) Charge(double step, double kelvins, double wall, in StepContext context)
    {
        double taken = 0, fromWalls = 0, byAir = 0, byWall = 0, cross = 0;
        for (var i = 0; i < bodies.Count; i++)
        {
            var heat = _heats[i] = context.InBin(i)
                ? bodies[i].HeatInBin(step, kelvins)
                : bodies[i].HeatIn(step, kelvins + context.Warmer(bodies[i]), wall, context.RadiantPerArea, context.View);
            (taken, fromWalls) = (taken + heat.Total, fromWalls + heat.FromWalls);
            byAir += heat.Convective * (1 - heat.Convective / heat.Stiffness);
            byWall += heat.Radiative * (1 - heat.Radiative / heat.Stiffness);
            cross += heat.Convective * heat.Radiative / heat.Stiffness;
        }

        return (taken, fromWalls, byAir, byWall, cross);
    }

    /// <summary>Heat the air would have beyond what was booked for it. [W]</summary>
    private static double Excess(double step, double kelvins, in StepContext context, in StepHeat heat) =>
        (context.After with { Kelvins = kelvins }).Enthalpy / step - Booked(step, context, heat) / step;

    /// <summary>Heat content of the air at the end, by the books. [J]</summary>
    private static double Booked(double step, in StepContext context, in StepHeat heat) =>
        context.Before.Enthalpy + context.VaporHeat + step * (heat.Heater + heat.Fan + heat.Sun + heat.Exchange.DehumidifierPower + heat.AirIn - heat.AirOut
            - heat.ToCharge - heat.ToWalls - heat.Drained);

    /// <summary>Temperature at which the air has just that. [K]</summary>
    private static double AirAfter(double step, in StepContext context, in StepHeat heat)
    {
        var enthalpy = Booked(step, context, heat) / context.After.DryAir;
        var ratio = context.After.Ratio;
        return Quantities.Temperature.IcePointKelvins + (enthalpy - ratio * BoxHeat.OfVapor(Quantities.Temperature.IcePointKelvins)) / Psychrometrics.HeatCapacity(ratio);
    }

    private double HeaterSlope(double kelvins, in StepContext context)
    {
        var heater = flows.Heater(kelvins, context.Setting.SetKelvins);
        return heater > 0 && heater < flows.Box.Heater.Power ? flows.Box.Heater.Power / flows.Box.Heater.Band : 0;
    }
}
