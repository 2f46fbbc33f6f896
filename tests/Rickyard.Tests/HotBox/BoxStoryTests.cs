using System.Text.Json;
using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using Rickyard.HotBox;
using Rickyard.Screens;
using Rickyard.Testing.Approval;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Tests.HotBox;

public sealed class BoxStoryTests
{
    private static readonly DryingRun Run = InventedCharge.Run();
    private static readonly ChargeRun Charge = Run.Charge!;

    [Fact]
    public void Story_of_a_box_is_the_approved_one() => Approved.Check("Rickyard.Tests", "story-box", Told(Run));

    [Fact]
    public void Json_of_a_box_is_the_approved_one()
    {
        var drying = Run.Case with { Charge = [] };
        Approved.Check("Rickyard.Tests", "box-json", RunJson.Write(Shortened(Run) with { Case = drying }));
    }

    [Fact]
    public void Json_has_the_box_and_every_class_along_the_days()
    {
        var run = JsonDocument.Parse(RunJson.Write(Run)).RootElement;
        var days = run.GetProperty("days").GetArrayLength();
        foreach (var name in new[] { "air_temp_c", "air_rh_pct", "heater_kw", "water_kg", "energy_kwh" }) Assert.Equal(days, run.GetProperty(name).GetArrayLength());
        foreach (var one in run.GetProperty("classes").EnumerateArray())
            Assert.Equal(days, one.GetProperty("bands").GetProperty("p90").GetProperty("core_pct_dry").GetArrayLength());
        var use = run.GetProperty("energy_use_kwh");
        Assert.Equal(230 / 3.6, new[] { "water", "wood", "walls", "vent" }.Sum(name => use.GetProperty(name).GetDouble()), 0.01);
        Assert.Equal(0.15 * 230 / 3.6, run.GetProperty("cost").GetDouble(), 0.01);
    }

    [Fact]
    public void Table_has_the_box_and_every_class_by_its_number()
    {
        var lines = System.Text.Encoding.UTF8.GetString(RunCsv.Write(Run)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains(",air_temp_c,air_rh_pct,wall_temp_c,heater_kw,water_kg,energy_kwh,class_1_mean_pct_dry,", lines[0], StringComparison.Ordinal);
        Assert.Contains("class_3_p90_core_pct_dry", lines[0], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.Equal(lines[0].Count(letter => letter == ','), line.Count(letter => letter == ',')));
    }

    [Theory]
    [InlineData(BoxLimit.Vapor, "larger vent")]
    [InlineData(BoxLimit.Surface, "faster fan or looser packing")]
    [InlineData(BoxLimit.Inside, "Finer splits")]
    [InlineData(BoxLimit.None, "drier or warmer air")]
    public void What_limits_a_stage_names_the_one_change(BoxLimit limit, string change) =>
        Assert.Contains(change, BoxLimitSentences.Change(Charge, new(0, 0, 1, limit, 0, 0.5, 0.2, 0.3)), StringComparison.Ordinal);

    [Theory]
    [InlineData(130e6, 52e6, "Insulation")]
    [InlineData(30e6, 152e6, "A smaller vent")]
    [InlineData(20e6, 20e6, "More power or a smaller charge")]
    public void Heater_that_is_short_asks_where_the_heat_goes(double walls, double vent, string change)
    {
        var charge = Charge with { Use = Charge.Use with { Walls = walls, Vent = vent } };
        Assert.StartsWith(change, BoxLimitSentences.Change(charge, new(0, 0, 1, BoxLimit.Heater, 12, 0, 0, 0)), StringComparison.Ordinal);
    }

    [Fact]
    public void Closed_rest_asks_for_nothing_but_time() =>
        Assert.Contains("Only warmth and time", BoxLimitSentences.Change(Charge, Charge.Limits[^1]), StringComparison.Ordinal);

    [Fact]
    public void Gas_is_bought_by_the_efficiency_of_its_burner()
    {
        var plan = InventedCharge.Plan with { Box = InventedCharge.Plan.Box with { Heater = new(1400, 4, 0, HeaterFuel.Gas, 0.8) }, Price = new(0.2, 0.05, "€") };
        Assert.Equal((200 / 0.8 * 0.05 + 30 * 0.2) / 3.6, EnergyCost.Of(Charge with { Plan = plan })!.Value, 1e-9);
        Assert.Null(EnergyCost.Of(Charge with { Plan = plan with { Price = new(0.2, null, "€") } }));
        Assert.Null(EnergyCost.Of(Charge with { Plan = plan with { Price = null } }));
    }

    [Fact]
    public void Override_stands_before_everything_else()
    {
        var hot = InventedCharge.Plan with { Stages = [new(StageKind.Drying, null, 82)], Override = "Half a day, and I sit beside it." };
        var run = InventedCharge.Run(hot);
        var limits = run.Charge!.Limits.Where(limit => limit.Stage == 0).ToList();
        var told = Told(run with { Charge = run.Charge with { Limits = limits } });
        Assert.StartsWith("OVERRIDE. Above a safety limit", told, StringComparison.Ordinal);
        Assert.Contains("I sit beside it", told.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains("I sit beside it", JsonDocument.Parse(RunJson.Write(run with { Charge = run.Charge with { Limits = limits } })).RootElement.GetProperty("override").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Box_that_takes_little_is_told_so()
    {
        var sunny = Charge with { Series = Charge.Series with { EnergyJoules = [.. Charge.Series.EnergyJoules.Select(joules => joules / 30)] } };
        Assert.Contains("less than the evaporation alone", string.Join(' ', EnergySentences.Of(sunny)), StringComparison.Ordinal);
        var usual = Charge with { Series = Charge.Series with { EnergyJoules = [.. Charge.Series.EnergyJoules.Select(joules => joules / 2)] } };
        Assert.Contains("within what kilns take", string.Join(' ', EnergySentences.Of(usual)), StringComparison.Ordinal);
    }

    private static DryingRun Shortened(DryingRun run)
    {
        static double[] Few(double[] values) => values[..3];
        static MoistureSeries FewOf(MoistureSeries s) => new(Few(s.Mean), Few(s.Core), Few(s.Shell), Few(s.End), Few(s.CoreCelsius), Few(s.MassKilograms), Few(s.LossFraction));
        var (charge, box) = (run.Charge!, run.Charge!.Series);
        return run with
        {
            Days = Few(run.Days),
            Typical = FewOf(run.Typical),
            LowTenth = FewOf(run.LowTenth),
            Median = FewOf(run.Median),
            HighTenth = FewOf(run.HighTenth),
            AirEquilibrium = Few(run.AirEquilibrium),
            SurfaceShare = Few(run.SurfaceShare),
            Charge = charge with
            {
                Series = new(Few(box.AirCelsius), Few(box.AirHumidity), Few(box.WallCelsius), Few(box.HeaterWatts), Few(box.WaterKilograms), Few(box.EnergyJoules)),
                Classes = [.. charge.Classes.Take(2).Select(one => one with { Typical = FewOf(one.Typical), LowTenth = FewOf(one.LowTenth), Median = FewOf(one.Median), HighTenth = FewOf(one.HighTenth) })],
            },
        };
    }

    private static string Told(DryingRun run)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new();
        RunStory.Tell(run, new Screen(output, error, 100));
        return output.ToString();
    }
}
