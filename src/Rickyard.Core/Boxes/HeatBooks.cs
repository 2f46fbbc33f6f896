using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>
/// Heat of a box over a step whose water is already booked: finds the temperature of the air at which every flow of heat, each counted once and with the heat content of what
/// it carries, closes (physics.md, eq. B12). Air, walls and pieces are then given what was booked for them.
/// </summary>
internal sealed class HeatBooks(BoxFlows flows, IReadOnlyList<ChargeBody> bodies)
{
    private const int MostRounds = 40;
    private const double Close = 1e-7;
    private readonly BodyHeat[] _heats = new BodyHeat[bodies.Count];
    private double _toWalls, _toWallsKelvins;

    /// <summary>Heat of each class over the step closed last.</summary>
    internal ReadOnlySpan<BodyHeat> Heats => _heats;

    /// <summary>Close the step.</summary>
    /// <param name="step">[s]</param>
    /// <param name="context">What the step has settled so far.</param>
    internal StepHeat CloseStep(double step, in StepContext context)
    {
        double kelvins = context.Kelvins, low = 150, high = 500, wall;
        (_toWalls, _toWallsKelvins) = (context.ToWalls, context.ToWallsKelvins);
        var heat = At(step, kelvins, context, out var slope);
        for (var round = 0; round < MostRounds; round++)
        {
            var excess = Excess(step, kelvins, context, heat);
            if (excess > 0) high = kelvins; else low = kelvins;
            var change = excess / slope;
            var next = kelvins - change;
            if (!(next > low && next < high)) next = (low + high) / 2;
            var moved = Math.Abs(next - kelvins);
            (kelvins, wall) = (next, heat.WallKelvins);
            heat = At(step, kelvins, context, out slope);
            if (moved < Close && Math.Abs(heat.WallKelvins - wall) < Close) break;
        }

        return heat with { AirKelvins = AirAfter(step, context, heat) };
    }

    /// <summary>All flows with the air at a temperature, and the slope of their excess by it.</summary>
    private StepHeat At(double step, double kelvins, in StepContext context, out double slope)
    {
        var wall = Wall(step, kelvins, context, out var wallFilm, out var wallLoss);
        double toCharge = 0, fromWalls = 0, byAir = 0, radiative = 0, radiativeKelvins = 0;
        for (var i = 0; i < bodies.Count; i++)
        {
            if (context.InBin(i)) continue;
            var heat = _heats[i] = bodies[i].HeatIn(step, kelvins + context.Warmer(bodies[i]), wall, context.RadiantPerArea, context.View);
            (toCharge, fromWalls, byAir) = (toCharge + heat.Total, fromWalls + heat.FromWalls, byAir + heat.Convective);
            (radiative, radiativeKelvins) = (radiative + heat.Radiative, radiativeKelvins + heat.Radiative * heat.Kelvins);
        }

        (_toWalls, _toWallsKelvins) = (radiative, radiativeKelvins);
        var exchange = context.Exchange;
        var ratio = exchange.RatioOut;
        var capacity = Psychrometrics.HeatCapacity(ratio);
        slope = context.After.DryAir * capacity / step + exchange.Out * capacity + wallFilm + byAir + HeaterSlope(kelvins, context);
        var condensing = exchange.OnWalls * BoxHeat.OfCondensing(kelvins);
        return new(
            exchange, flows.Heater(kelvins, context.Setting.SetKelvins), flows.Box.Fan.Power, flows.Sun(context.Outside), toCharge,
            wallFilm * (kelvins - wall) + condensing - fromWalls, wallLoss * (wall - context.Outside.Kelvins),
            exchange.In * BoxHeat.OfAir(context.Outside.Kelvins, exchange.RatioIn), exchange.Out * BoxHeat.OfAir(kelvins, ratio),
            exchange.OnWalls * BoxHeat.OfWater(kelvins) + exchange.Dehumidified * BoxHeat.OfWater(kelvins) + context.DripOfWood * BoxHeat.OfWater(kelvins),
            context.DripOfWood, kelvins, wall);
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

    /// <summary>Temperature of the walls at the end of the step, pieces taken where the last round left them. [K]</summary>
    private double Wall(double step, double kelvins, in StepContext context, out double film, out double loss)
    {
        (film, loss) = (flows.Box.WallArea * context.WallFilm, flows.WallLoss);
        var stores = flows.Box.WallArea * flows.Box.WallHeatCapacity / step;
        var condensing = context.Exchange.OnWalls * BoxHeat.OfCondensing(kelvins);
        return (stores * context.Before.WallKelvins + film * kelvins + _toWallsKelvins + condensing + loss * context.Outside.Kelvins)
            / (stores + film + _toWalls + loss);
    }
}
