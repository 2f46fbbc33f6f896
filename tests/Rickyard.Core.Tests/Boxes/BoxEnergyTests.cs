using Rickyard.Core.Boxes;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>Energy against steam tables and published kilns.</summary>
public sealed class BoxEnergyTests(ITestOutputHelper output)
{
    private const double JoulesPerKilowattHour = 3.6e6;

    /// <summary>A box of four cubic metres with good walls, full of wood: the vent opens by humidity, so that little warm air is thrown away.</summary>
    private static readonly BoxDescription Kiln = SampleBox.Cabinet with
    {
        Volume = 4,
        WallArea = 15,
        WallConductance = 0.5,
        Heater = new(6000, 4, 0, HeaterFuel.Electricity, 1),
        Fan = new(1.5, 0.5, 100),
        Vent = new(0.02, 0, 0.5),
    };

    // Steam tables: 0.655 kWh/kg to evaporate at 60 °C (from memory), 0.72 from 20 to 100 °C (computed); sorption from 30 to 18 % adds 2 % (computed)
    [Theory]
    [InlineData(60, 0.655)]
    [InlineData(70, 0.648)]
    public void Water_of_green_wood_takes_its_heating_and_its_latent_heat_and_a_few_percent_of_sorption(double celsius, double latent)
    {
        var trace = SampleBox.Run(SampleBox.Plan(Kiln, celsius), [SampleBox.Class(0.05, 300, 0.9, 10, "red maple")], 5);
        var perKilogram = PerKilogram(trace, trace.Use.Water);
        var expected = latent + 4186 * (celsius - 10) / JoulesPerKilowattHour;
        Tell(trace);
        Assert.InRange(trace.Typical[0].Mean[^1], 0.05, 0.35);
        Assert.InRange(perKilogram / expected, 0.98, 1.05);
    }

    // Kilns overall 1.5 to 4 times the evaporation energy, 1.0 to 2.6 kWh/kg (text); batch firewood kiln, green to dry, 1.27 kWh heat per kg for red oak (computed from a maker's figures)
    [Fact]
    public void Published_batch_kiln_lies_between_a_full_large_box_and_a_half_full_small_one()
    {
        var large = Kiln with { Volume = 12, WallArea = 32, WallConductance = 0.3, Heater = Kiln.Heater with { Power = 20000 }, Fan = new(1.5, 1.5, 200), Vent = new(0.08, 0, 0.6) };
        BoxTrace good = SampleBox.Run(SampleBox.Plan(large, 60), [SampleBox.Class(0.06, 1500, 0.8)], 7), fair = SampleBox.Run(SampleBox.Plan(Kiln, 60), [SampleBox.Class(0.06, 300, 0.8)], 8);
        Tell(good);
        Tell(fair);
        Assert.InRange(PerKilogram(good, Bought(good)), 0.9, 1.27);
        Assert.InRange(PerKilogram(fair, Bought(fair)), 1.27, 2.6);
    }

    [Fact]
    public void Thin_cabinet_over_two_weeks_costs_many_times_what_kilns_do()
    {
        var thin = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 70), [SampleBox.Class(0.08, 20)], 14);
        Tell(thin);
        Assert.InRange(PerKilogram(thin, Bought(thin)), 2.6, 40);
        Assert.InRange(PerKilogram(thin, thin.Use.Water), 0.65, 0.8);
    }

    // Room dehumidifiers 0.30 to 0.64 kWh per litre by their label (table), at 18.3 °C; dehumidifier kiln with heat pump 0.325 kWh/kg (text). In warmer air a machine does better than its label.
    [Fact]
    public void Dehumidifier_box_uses_what_labels_and_dehumidifier_kilns_say()
    {
        var box = Kiln.Shut() with { Heater = new(0, 4, 0, HeaterFuel.Electricity, 1), Fan = new(1, 0.3, 20), Dehumidifier = new(15.0 / 86400, 2.0, 0.5) };
        var trace = SampleBox.Run(SampleBox.Plan(box, null, outsideCelsius: 20), [SampleBox.Class(0.06, 200, 0.8, 20)], 10);
        Tell(trace);
        Assert.InRange(PerKilogram(trace, trace.Use.Dehumidifier), 0.25, 0.64);
        Assert.InRange(PerKilogram(trace, Bought(trace)), 0.30, 0.64);
        Assert.InRange(trace.Use.Vent / Bought(trace), -0.02, 0.05);
    }

    [Fact]
    public void Uses_add_up_to_what_came_in_and_none_is_negative()
    {
        var trace = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 60), [SampleBox.Class(0.06, 40, celsius: -10)], 5);
        var use = trace.Use;
        Assert.Equal(use.Heater + use.Fan + use.Dehumidifier + use.Sun, use.Water + use.Wood + use.Walls + use.Vent, 1e-6 * use.Heater);
        Assert.All([use.Water, use.Wood, use.Walls, use.Vent], part => Assert.True(part > 0));
    }

    [Fact]
    public void Water_costs_as_much_when_it_drips_off_walls_as_when_it_leaves_by_the_vent()
    {
        var shut = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet.Shut() with { WallConductance = 6 }, 60, outsideCelsius: 0), [SampleBox.Class(0.05, 40)], 6);
        Tell(shut);
        Assert.InRange(PerKilogram(shut, shut.Use.Water), 0.65, 0.78);
        Assert.InRange(shut.Use.Vent / Bought(shut), -0.01, 0.03);
    }

    [Fact]
    public void Bought_energy_counts_the_efficiency_of_the_heater()
    {
        var gas = SampleBox.Cabinet with { Heater = SampleBox.Cabinet.Heater with { Fuel = HeaterFuel.Gas, Efficiency = 0.8 } };
        var trace = SampleBox.Run(SampleBox.Plan(gas, 60), [SampleBox.Class(0.06, 10)], 3);
        Assert.Equal(trace.Use.Heater / 0.8 + trace.Use.Fan, Bought(trace), 1e-6 * Bought(trace));
    }

    private static double Bought(BoxTrace trace) => trace.Series.EnergyJoules[^1];

    private static double PerKilogram(BoxTrace trace, double joules) => joules / JoulesPerKilowattHour / trace.Series.WaterKilograms[^1];

    private void Tell(BoxTrace trace) => output.WriteLine(
        $"{trace.Series.WaterKilograms[^1]:0.0} kg, kWh/kg: bought {PerKilogram(trace, Bought(trace)):0.000}, water {PerKilogram(trace, trace.Use.Water):0.000}, wood {PerKilogram(trace, trace.Use.Wood):0.000}, "
        + $"walls {PerKilogram(trace, trace.Use.Walls):0.000}, vent {PerKilogram(trace, trace.Use.Vent):0.000}, dehumidifier {PerKilogram(trace, trace.Use.Dehumidifier):0.000}; "
        + $"mean {trace.Typical[0].Mean[0]:P0} to {trace.Typical[0].Mean[^1]:P1}, air {trace.Series.AirCelsius[^1]:0} °C, {trace.Series.AirHumidity[^1]:P0}; drip {trace.DripKilograms:0.0}");
}
