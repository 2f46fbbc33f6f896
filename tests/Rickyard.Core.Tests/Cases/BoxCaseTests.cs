using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class BoxCaseTests
{
    private const string Bare = """{ "inside": { "width": "1 m", "depth": "1 m", "height": "1 m" }, "walls": "plywood", "heater": { "power": "1 kW" }, "temperature": "60 °C" }""";

    [Fact]
    public void Whole_box_is_understood()
    {
        var plan = SampleBoxCase.Plan(SampleBoxCase.Text);
        Assert.Equal((0.546, 4.28, 1.4), (plan.Box.Volume, plan.Box.WallArea, plan.Box.Height), Near3);
        Assert.Equal((1.6, 8000.0), (plan.Box.WallConductance, plan.Box.WallHeatCapacity));
        Assert.Equal(new BoxHeater(1500, 4, 0.20, HeaterFuel.Electricity, 1), plan.Box.Heater);
        Assert.Equal(new BoxFan(0.5, 0.1, 40), plan.Box.Fan);
        Assert.Equal(new BoxVent(0, 20e-4, 0.60), plan.Box.Vent);
        Assert.Equal(8e-4, plan.Box.LeakOpening, 1e-12);
        Assert.Equal(new BoxAmbient(15, 0.55), plan.Ambient);
        Assert.Equal([new BoxStage(StageKind.Drying, 5, 70), new BoxStage(StageKind.ClosedRest, 3, 70, BoxVent.Shut)], plan.Stages);
        Assert.Equal(new EnergyPrice(0.15, null, "$"), plan.Price);
        Assert.Null(plan.Override);
        Assert.Null(plan.Box.Dehumidifier);
        Assert.Null(plan.Box.Sun);
    }

    [Fact]
    public void Box_that_says_everything_assumes_nothing() => Assert.Empty(SampleCase.Read(SampleBoxCase.Text).Assumptions);

    [Fact]
    public void Left_out_values_have_defaults_that_are_said()
    {
        var drying = SampleCase.Read(SampleCase.Change(SampleBoxCase.Text, "air.box", Bare));
        var plan = ((BoxPeriod)drying.Periods[0]).Plan;
        Assert.Equal((3.6, 12_000.0), (plan.Box.WallConductance, plan.Box.WallHeatCapacity));
        Assert.Equal(new BoxHeater(1000, 3, 0.10, HeaterFuel.Electricity, 1), plan.Box.Heater);
        Assert.Equal(new BoxFan(0.15, 0.15 * 0.4, 0), plan.Box.Fan);
        Assert.Equal(BoxVent.Shut, plan.Box.Vent);
        Assert.Equal(12e-4, plan.Box.LeakOpening, 1e-12);
        Assert.Equal(new BoxAmbient(20, 0.50), plan.Ambient);
        Assert.Equal(new BoxStage(StageKind.Drying, null, 60), Assert.Single(plan.Stages));
        Assert.Null(plan.Price);
        foreach (var part in new[] { "Walls of that kind", "thermostat's band", "shines on the wood", "runs on", "No fan", "No vent", "leaks", "air outside" })
            Assert.Contains(drying.Assumptions, said => said.Contains(part, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("thin metal", 8)]
    [InlineData("insulated cabinet", 1.6)]
    [InlineData("plywood", 3.6)]
    [InlineData("insulated plywood", 0.8)]
    [InlineData("masonry", 2.4)]
    public void Every_kind_of_wall_is_understood(string kind, double conductance) =>
        Assert.Equal(conductance, SampleBoxCase.Plan(SampleBoxCase.WithBox("walls", $"\"{kind}\"")).Box.WallConductance);

    // 1 BTU/(h ft² °F) = 5.678263 W/m²K (NIST SP 811, appendix B.8).
    [Theory]
    [InlineData("1.2 W/m2K", 1.2)]
    [InlineData("0.5 m2K/W", 2)]
    [InlineData("0.5 BTU/h ft2 °F", 2.8391315)]
    [InlineData("10 h ft2 °F/BTU", 0.5678263)]
    public void Conductance_is_read_as_such_and_as_an_R_value(string text, double conductance) =>
        Assert.Equal(conductance, SampleBoxCase.Plan(SampleBoxCase.WithBox("walls.conductance", $"\"{text}\"")).Box.WallConductance, 1e-6);

    // Feet, inches, pints and BTU by NIST SP 811, appendix B.8; heat capacity 1 BTU/(ft² °F) = 20.4417 kJ/m²K.
    [Theory]
    [InlineData("heater.power", "5118.2 BTU/h", 1500)]
    [InlineData("fan.flow", "212 cfm", 0.1000529)]
    [InlineData("vent.opening", "3.1 in2", 0.0020000)]
    [InlineData("leaks.opening", "0.01 ft2", 0.000929030)]
    [InlineData("walls.heat capacity", "0.5 BTU/ft2 °F", 10220.9)]
    [InlineData("heater.thermostat band", "7.2 °F", 4)]
    public void Units_of_a_workshop_are_understood(string path, string text, double expected)
    {
        var box = SampleBoxCase.Plan(SampleBoxCase.WithBox(path, $"\"{text}\"")).Box;
        var read = path switch
        {
            "heater.power" => box.Heater.Power,
            "fan.flow" => box.Fan.Flow,
            "vent.opening" => box.Vent.Opening,
            "leaks.opening" => box.LeakOpening,
            "walls.heat capacity" => box.WallHeatCapacity,
            _ => box.Heater.Band,
        };
        Assert.Equal(expected, read, 1e-4 * expected);
    }

    [Fact]
    public void Speed_and_flow_of_a_fan_follow_from_each_other()
    {
        Assert.Equal(0.5 * 0.4 * 0.39, SampleBoxCase.Plan(SampleBoxCase.WithBox("fan", """{ "speed": "0.5 m/s" }""")).Box.Fan.Flow, 1e-12);
        Assert.Equal(0.1 / (0.4 * 0.39), SampleBoxCase.Plan(SampleBoxCase.WithBox("fan", """{ "flow": "0.1 m3/s" }""")).Box.Fan.Speed, 1e-12);
        Assert.Equal(50, SampleBoxCase.Plan(SampleBoxCase.WithBox("fan", """{ "flow": "0.1 m3/s" }""")).Box.Fan.Power, 1e-9);
    }

    [Theory]
    [InlineData("14 L/day", 14 / 86_400.0, 1.80)]
    [InlineData("25 pints/day", 25 * 0.473176 / 86_400, 1.57)]
    [InlineData("60 pints/day", 60 * 0.473176 / 86_400, 3.30)]
    public void Dehumidifier_without_its_efficiency_has_the_label_minimum_of_its_size(string capacity, double rate, double efficiency)
    {
        var machine = SampleBoxCase.Plan(SampleBoxCase.WithBox("dehumidifier", $$"""{ "capacity": "{{capacity}}" }""")).Box.Dehumidifier!;
        Assert.Equal((rate, efficiency), (machine.Capacity, machine.LitresPerKilowattHour), Near3);
        Assert.Null(machine.HumidityLimit);
    }

    [Fact]
    public void Glazing_takes_the_place_of_wall_and_needs_weather_outside()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("ambient", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "air.box.sun", """{ "glazing": "1 m2", "over level": 1.2 }""");
        var plan = SampleBoxCase.Plan(text);
        Assert.Equal(new BoxSun(1, 0.60, 3.5, 1.2), plan.Box.Sun);
        Assert.Equal(3.28, plan.Box.WallArea, 1e-12);
        Assert.Equal(new WeatherName(null, "Des Moines, Iowa"), plan.Ambient.Weather);
        Assert.Contains("air.box.sun", CaseReader.Read(SampleBoxCase.WithBox("sun", """{ "glazing": "1 m2" }"""), "c.json").Problems.Select(problem => problem.Field));
    }

    [Fact]
    public void Stages_have_their_own_vent_or_steer_that_of_the_box()
    {
        var stages = """
            [ { "for": "2 days", "temperature": "60 °C" },
              { "for": "2 days", "temperature": "60 °C", "humidity": "30 %" },
              { "for": "2 days", "temperature": "60 °C", "vent": "shut" },
              { "kind": "equalizing", "for": "2 days", "temperature": "60 °C", "vent": { "flow": "9 m3/h", "humidity": "80 %" } },
              { "kind": "open rest", "for": "1 day" },
              { "for": "2 days" } ]
            """;
        Assert.Equal(
            [
                new(StageKind.Drying, 2, 60), new(StageKind.Drying, 2, 60, new(0, 20e-4, 0.30)), new(StageKind.Drying, 2, 60, BoxVent.Shut),
                new(StageKind.Equalizing, 2, 60, new(9 / 3600.0, 0, 0.80)), new(StageKind.OpenRest, 1, null), new(StageKind.Drying, 2, null),
            ],
            SampleBoxCase.Plan(SampleBoxCase.WithBox("stages", stages)).Stages);
    }

    [Fact]
    public void Equalizing_shuts_a_vent_that_no_humidity_steers_and_says_so()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("vent", """{ "opening": "20 cm2" }"""), "air.box.stages", """[ { "kind": "equalizing", "for": "8 days", "temperature": "60 °C" } ]""");
        Assert.Equal(BoxVent.Shut, SampleBoxCase.Plan(text).Stages[0].Vent);
        Assert.Contains(SampleCase.Read(text).Assumptions, said => said.Contains("vent is shut", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("0.15 $/kWh", 0.15, "$")]
    [InlineData("€0.30/kWh", 0.30, "€")]
    [InlineData("12 ct per kWh", 12, "ct")]
    [InlineData("2.93001 $/therm", 0.10, "$")]
    public void Price_of_energy_is_understood(string text, double price, string currency)
    {
        var read = SampleBoxCase.Plan(SampleBoxCase.WithBox("tariff.electricity", $"\"{text}\"")).Price!;
        Assert.Equal(price, read.Electricity!.Value, 1e-6);
        Assert.Equal(currency, read.Currency);
    }

    [Fact]
    public void Lengths_of_the_stages_are_the_length_of_a_run_that_does_not_say_its_own() =>
        Assert.Equal(8, SampleCase.Read(SampleCase.Change(SampleBoxCase.Text, "run", null)).Days);

    [Fact]
    public void Weather_outside_the_box_is_among_the_weather_of_the_case() => Assert.Equal(
        [new WeatherName("yard.csv", null)],
        SampleCase.Read(SampleBoxCase.WithBox("ambient", """{ "weather": { "file": "yard.csv" } }""")).Weather);

    private static bool Near3((double A, double B, double C) a, (double A, double B, double C) b) =>
        Math.Abs(a.A - b.A) < 1e-9 && Math.Abs(a.B - b.B) < 1e-9 && Math.Abs(a.C - b.C) < 1e-9;

    private static bool Near3((double A, double B) a, (double A, double B) b) => Math.Abs(a.A - b.A) < 1e-9 && Math.Abs(a.B - b.B) < 1e-9;
}
