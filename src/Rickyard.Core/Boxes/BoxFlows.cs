using Rickyard.Core.Air;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Boxes;

/// <summary>What heater, vent, leaks, walls and dehumidifier of a box do at a state of its air (physics.md, eq. B3 to B10). Raw SI doubles: these sit inside the step.</summary>
internal sealed class BoxFlows(BoxDescription box, double pressure)
{
    /// <summary>Discharge coefficient of sharp-edged openings (ASHRAE Fundamentals, ventilation chapter, from memory: 0.65 with mixing in one opening 0.4 to 0.65).</summary>
    private const double Discharge = 0.6;

    /// <summary>Relative humidity over which a damper or a dehumidifier goes from shut to open, centred on its setting: a usual hair or polymer switch (judgement).</summary>
    private const double HumidityBand = 0.05;

    /// <summary>Coil of a dehumidifier, below which no water condenses, and what it is rated at: 18.3 °C and 60 % (rating point of reference/label rules; the coil is judgement). [K], [Pa]</summary>
    private const double CoilKelvins = Temperature.IcePointKelvins + 5, RatedKelvins = Temperature.IcePointKelvins + 18.3, RatedHumidity = 0.60;

    /// <summary>A dehumidifier's compressor stops above 50 °C, by and by over the last kelvins (judgement). [K]</summary>
    private const double HottestKelvins = Temperature.IcePointKelvins + 50, CutOutBand = 5;

    /// <summary>Part of its rated water below which a dehumidifier rests by and by, its coil hardly below the dew point (judgement).</summary>
    private const double LeastPart = 0.1;

    /// <summary>Vapour beyond saturation turns into mist and settles on the walls within so long (judgement; short, so that air is hardly ever beyond saturation). [s]</summary>
    private const double MistSettles = 1;

    private const double Gravity = 9.80665;

    internal BoxDescription Box => box;

    internal double Pressure => pressure;

    /// <summary>Heat from the heater. [W]</summary>
    internal double Heater(double kelvins, double setKelvins) => box.Heater.Power <= 0 || double.IsNegativeInfinity(setKelvins)
        ? 0
        : box.Heater.Power * Math.Clamp(0.5 + (setKelvins - kelvins) / box.Heater.Band, 0, 1);

    /// <summary>Dry air let in by vent and leaks together. [kg s⁻¹]</summary>
    internal double FreshAir(double kelvins, double vapor, in Outside outside, BoxSetting setting)
    {
        if (!setting.LetsAirThrough) return 0;
        var dryOutside = (pressure - outside.VaporPressure) / (AirConstants.DryAirGasConstant * outside.Kelvins);
        double open = Opened(kelvins, vapor, setting.Vent.HumidityLimit), drawn = Discharge * Draught(kelvins, vapor, outside);
        return dryOutside * (open * setting.Vent.Flow + (open * setting.Vent.Opening + box.LeakOpening / 2) * drawn);
    }

    /// <summary>Part of the vent that stands open, 0 to 1.</summary>
    internal static double Opened(double kelvins, double vapor, double? limit) => limit is { } humidity
        ? Math.Clamp(0.5 + (vapor / SaturationPressure.OverWater(kelvins) - humidity) / HumidityBand, 0, 1)
        : 1;

    /// <summary>Vapour that condenses on the walls, and mist that settles there, and drips off. [kg s⁻¹]</summary>
    internal double OnWalls(double kelvins, double vapor, double wallKelvins, double film)
    {
        double excess = vapor - SaturationPressure.OverWater(wallKelvins), mist = vapor - SaturationPressure.OverWater(kelvins);
        return (excess > 0 ? box.WallArea * SurfaceTransfer.VaporConductance(film, wallKelvins, pressure) * excess : 0)
            + (mist > 0 ? BoxAir.VaporIn(box.Volume, kelvins, mist) / MistSettles : 0);
    }

    /// <summary>Water that the dehumidifier takes out, and the electricity it draws. [kg s⁻¹], [W]</summary>
    internal (double Water, double Power) Dehumidified(double kelvins, double vapor)
    {
        if (box.Dehumidifier is not { } machine) return (0, 0);
        var coil = SaturationPressure.OverWater(CoilKelvins);
        var rated = RatedHumidity * SaturationPressure.OverWater(RatedKelvins) - coil;
        var on = Opened(kelvins, vapor, machine.HumidityLimit) * Math.Clamp((HottestKelvins - kelvins) / CutOutBand, 0, 1);
        var part = Math.Clamp((vapor - coil) / rated, 0, 2);
        return (on * machine.Capacity * part, on * Math.Min(1, part / LeastPart) * machine.Capacity / machine.LitresPerKilowattHour * 3.6e6);
    }

    /// <summary>Heat from the sun. [W]</summary>
    internal double Sun(in Outside outside) => box.Sun is { } sun ? sun.Area * sun.Gain * sun.OverLevel * outside.Sun : 0;

    /// <summary>What the walls, and with them the glazing, let through per kelvin. [W K⁻¹]</summary>
    internal double WallLoss => box.WallArea * box.WallConductance + (box.Sun is { } sun ? sun.Area * sun.Conductance : 0);

    /// <summary>Convection at the inside of the walls. [W m⁻² K⁻¹]</summary>
    internal double WallFilm(double kelvins) => SurfaceTransfer.ConvectiveCoefficient(box.Fan.Speed, box.Height, kelvins, pressure);

    /// <summary>Speed in openings low and high, drawn by the difference in density; the level of no difference lies midway. [m s⁻¹]</summary>
    private double Draught(double kelvins, double vapor, in Outside outside)
    {
        double inside = Density(kelvins, vapor), open = Density(outside.Kelvins, outside.VaporPressure);
        return Math.Sqrt(Gravity * box.Height * Math.Abs(open - inside) / Math.Min(open, inside));
    }

    private double Density(double kelvins, double vapor) =>
        ((pressure - vapor) / AirConstants.DryAirGasConstant + vapor / AirConstants.VaporGasConstant) / kelvins;
}
