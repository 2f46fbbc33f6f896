using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

public sealed class BoxSafetyTests
{
    private const string Reason = "An hour only, and I stand beside it.";

    private static BoxPlan Cabinet => SampleBoxCase.Plan(SampleBoxCase.Text);

    // Limits: surface in long contact 77 °C (170 °F), Babrauskas, Gray and Janssens 2007; cut-out 93 °C (200 °F), engineering practice.
    [Theory]
    [InlineData(77, 3, null, true)]
    [InlineData(77.1, 3, null, false)]
    [InlineData(77.1, 3, Reason, true)]
    [InlineData(91.5, 3, Reason, true)]
    [InlineData(92, 3, Reason, false)]
    [InlineData(93, 0.1, Reason, false)]
    [InlineData(95, 3, Reason, false)]
    [InlineData(95, 3, null, false)]
    public void Setting_is_allowed_up_to_the_limit_and_with_own_words_up_to_the_cut_out(double celsius, double band, string? reason, bool allowed) =>
        Assert.Equal(allowed, SafetyLimits.Refusal(celsius, band, reason, "x") is null);

    [Fact]
    public void Override_in_the_case_is_kept_and_stays_visible()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("stages.0.temperature", "\"80 °C\""), "air.box.override", $"\"{Reason}\"");
        var said = BoxCautions.Override(SampleBoxCase.Plan(text));
        Assert.Contains("80 °C", said, StringComparison.Ordinal);
        Assert.Contains(Reason, said, StringComparison.Ordinal);
    }

    [Fact]
    public void Override_that_nothing_needs_is_not_shown() => Assert.Null(BoxCautions.Override(Cabinet with { Override = Reason }));

    [Fact]
    public void Override_is_shown_on_one_line() => Assert.DoesNotContain(
        '\n', BoxCautions.Override(Cabinet with { Override = "first\nsecond", Stages = [new(StageKind.Drying, 1, 80)] })!);

    [Fact]
    public void Electric_cabinet_is_told_of_fire_cut_out_load_and_food_but_not_of_a_burner_of_its_own()
    {
        var said = BoxCautions.For(Cabinet);
        Told(said, "Fire:", "93 °C", "Long contact:", "unattended", "burns all at once", "under a roof", "35 ppm", "200 ppm", "Electrical load:", "Damp:", "Opening:", "Closed rest:", "Food:");
        Assert.DoesNotContain(said, words => words.Contains("the burner stands outside", StringComparison.Ordinal) || words.StartsWith("Sun:", StringComparison.Ordinal));
        Assert.Contains("local codes", said[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Load_is_that_of_heater_fan_and_dehumidifier_together()
    {
        // 18 L a day at 1.5 L/kWh: 12 kWh a day, 500 W.
        var box = Cabinet.Box with { Heater = Cabinet.Box.Heater with { Power = 900 }, Dehumidifier = new(18 / 86_400.0, 1.5, null) };
        Told(BoxCautions.For(Cabinet with { Box = box }), "1440 W for days", "Dehumidifier:");
        Told(BoxCautions.For(Cabinet with { Box = box with { Fan = box.Fan with { Power = 41 } } }), "1441 W is more than a usual plug carries");
    }

    [Fact]
    public void Gas_is_told_to_stay_outside_and_draws_nothing_from_the_plug()
    {
        var box = Cabinet.Box with { Heater = Cabinet.Box.Heater with { Power = 9000, Fuel = HeaterFuel.Gas } };
        Told(BoxCautions.For(Cabinet with { Box = box }), "the burner stands outside", "200 ppm", "Electrical load: 40 W");
    }

    [Fact]
    public void Box_of_the_sun_is_told_of_the_sun_and_not_of_an_element()
    {
        var box = Cabinet.Box with { Heater = new(0, 3, 0, HeaterFuel.Electricity, 1), Fan = new(0.15, 0.02, 0), Sun = new(1, 0.6, 3.5, 1) };
        var said = BoxCautions.For(Cabinet with { Box = box, Stages = [new(StageKind.Drying, null, null)] });
        Told(said, "Sun:", "Opening:");
        Assert.Equal(3, said.Count);
    }

    [Fact]
    public void Cold_box_without_machines_is_told_nothing_but_who_comes_first() => Assert.Single(BoxCautions.For(Cabinet with
    {
        Box = Cabinet.Box with { Heater = new(0, 3, 0, HeaterFuel.Electricity, 1), Fan = new(0.15, 0.02, 0) },
        Stages = [new(StageKind.Drying, null, null)],
    }));

    private static void Told(IReadOnlyList<string> said, params string[] parts) =>
        Assert.All(parts, part => Assert.Contains(said, words => words.Contains(part, StringComparison.Ordinal)));
}
