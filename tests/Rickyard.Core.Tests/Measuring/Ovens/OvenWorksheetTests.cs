using Rickyard.Core.Measuring.Ovens;
using Rickyard.Core.Quantities;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Ovens;

public sealed class OvenWorksheetTests
{
    // ASTM D4442 (Intertek summary, text): Method A ends at twice the sensitivity in 3 h.
    [Theory]
    [InlineData(100.3, 100.1, true)]
    [InlineData(100.4, 100.1, false)]
    public void Method_a_ends_at_twice_the_balance(double before, double last, bool constant) => Assert.Equal(constant, Sheet("ASTM D4442 A", 0.1, (0, 136), (21, before), (24, last)).IsConstant);

    // EN 13183-1 (from memory): less than 0.1 % in 2 h.
    [Theory]
    [InlineData(100.05, true)]
    [InlineData(100.25, false)]
    public void European_method_ends_at_a_thousandth(double before, bool constant) => Assert.Equal(constant, Sheet("EN 13183-1", 0.01, (0, 136), (22, before), (24, 100)).IsConstant);

    // ISO 18134-1 (from memory): 0.2 % of the loss in 60 min; here 36 g lost.
    [Theory]
    [InlineData(100.07, true)]
    [InlineData(100.08, false)]
    public void Fuel_method_ends_at_a_share_of_the_loss(double before, bool constant) => Assert.Equal(constant, Sheet("ISO 18134-1", 0.01, (0, 136), (15, before), (16, 100)).IsConstant);

    // W1, Purdue FNR-156 (text, second-hand): 136 g, 100 g, 36 %.
    [Fact]
    public void Constant_mass_gives_moisture_between_its_limits()
    {
        var sheet = Sheet("ASTM D4442 B", 0.1, (0, 136), (20, 100.1), (24, 100));
        Assert.True(sheet.IsConstant);
        Assert.Equal(0.36, sheet.Moisture!.Value, 0.0005);
        Assert.InRange(sheet.Low!.Value, 0.35, 0.36);
        Assert.InRange(sheet.High!.Value, 0.36, 0.365);
        Assert.Null(sheet.NextHours);
    }

    [Fact]
    public void Same_mass_too_soon_or_too_close_is_not_constant()
    {
        Assert.False(Sheet("ASTM D4442 B", 0.1, (0, 136), (1, 135), (5, 135)).IsConstant);
        Assert.False(Sheet("ASTM D4442 B", 0.1, (0, 136), (23, 100), (24, 100)).IsConstant);
        Assert.False(Sheet("ASTM D4442 B", 0.1, (0, 136), (24, 100)).IsConstant);
    }

    // A sample that loses as an exponential to 100 g: what is left is found exactly.
    [Fact]
    public void Water_left_is_what_the_rates_fall_on_to()
    {
        static double At(double hours) => 100 + 36 * Math.Exp(-hours / 4);
        var sheet = Sheet("ASTM D4442 B", 0.001, (0, 136), (4, At(4)), (8, At(8)), (12, At(12)));
        Assert.False(sheet.IsConstant);
        Assert.Equal(At(12) - 100, 1000 * sheet.WaterLeft!.Value, 0.1);
        Assert.True(sheet.Low < 0.36 && sheet.High > 0.36);
        Assert.Equal(16, sheet.NextHours);
    }

    [Fact]
    public void Two_weighings_give_no_upper_limit()
    {
        var sheet = Sheet("ASTM D4442 B", 0.1, (0, 136), (12, 105));
        Assert.NotNull(sheet.Moisture);
        Assert.Null(sheet.High);
        Assert.Equal((null, 12), (Sheet("ASTM D4442 B", 0.1, (0, 136)).Moisture, Sheet("ASTM D4442 B", 0.1, (0, 136)).NextHours));
    }

    // Wengert, woodworkingnetwork (text): two weighings a minute apart are equal.
    [Theory]
    [InlineData(40.1, false)]
    [InlineData(40.0, true)]
    public void Microwave_ends_when_two_weighings_are_equal(double before, bool constant)
    {
        var method = OvenMethods.Usual(Appliance.Microwave);
        var sheet = OvenWorksheet.Make(method, [At(0, 52.1), At(20.0 / 60, 41), At(25.0 / 60, before), At(26.0 / 60, 40.0)], Mass.FromKilograms(0.0001), "--microwave").Value!;
        Assert.Equal(constant, sheet.IsConstant);
    }

    [Fact]
    public void Coarse_balance_is_noticed()
    {
        Assert.True(Sheet("EN 13183-1", 1, (0, 136), (22, 100), (24, 100)).IsBalanceTooCoarse);
        Assert.False(Sheet("EN 13183-1", 0.1, (0, 136), (22, 100), (24, 100)).IsBalanceTooCoarse);
    }

    [Fact]
    public void Weighings_that_cannot_be_are_named_all_at_once()
    {
        var problems = OvenWorksheet.Make(OvenMethods.Usual(Appliance.Oven), [At(0, 136), At(12, 100), At(10, 99), At(16, 105)], Mass.FromKilograms(0.0001), "--oven").Problems;
        Assert.Equal(2, problems.Count);
        Assert.Single(OvenWorksheet.Make(OvenMethods.Usual(Appliance.Oven), [At(0, 700), At(12, 100)], Mass.FromKilograms(0.0001), "--oven").Problems);
        Assert.NotEmpty(OvenWorksheet.Make(OvenMethods.Usual(Appliance.Oven), [], Mass.FromKilograms(0), "--oven").Problems);
    }

    [Fact]
    public void Every_method_says_how_it_is_vouched_for()
    {
        Assert.Equal((12, 3), (OvenMethods.For(Appliance.Oven).Count, OvenMethods.For(Appliance.Microwave).Count));
        Assert.All(OvenMethods.All, method => Assert.True(method is { Mark.Length: > 0, NumbersMark.Length: > 0, Source.Length: > 0, IntervalHours: > 0, Limit: >= 0 }, method.Key));
        Assert.All(OvenMethods.All, method => Assert.Same(method, OvenMethods.Find(method.Key.ToLowerInvariant(), method.Appliance, "--method").Value));
        Assert.All(OvenMethods.All.Where(method => method.Words.Length == 0), method => Assert.Equal("judgement", method.NumbersMark));
    }

    [Theory]
    [InlineData("ASTM D442 B", Appliance.Oven, "Did you mean \"ASTM D4442 B\"?")]
    [InlineData("sunshine", Appliance.Oven, "Give one of")]
    [InlineData("ASTM D4442 B", Appliance.Microwave, "defrost microwave")]
    public void Unknown_method_is_answered_with_those_there_are(string name, Appliance appliance, string words) =>
        Assert.Contains(words, Assert.Single(OvenMethods.Find(name, appliance, "--method").Problems).WhatToDo, StringComparison.Ordinal);

    [Fact]
    public void Cautions_speak_of_fire_smoke_air_and_instructions() => Assert.All(Enum.GetValues<Appliance>(), appliance =>
    {
        var all = string.Join(' ', OvenCautions.For(appliance));
        Assert.All(new[] { "Fire", "Smoke", "never leave", "Ventilate", "instructions" }, word => Assert.Contains(word, all, StringComparison.Ordinal));
    });

    private static OvenWorksheet Sheet(string method, double balance, params (double Hours, double Grams)[] weighings) => OvenWorksheet.Make(
        OvenMethods.Find(method, Appliance.Oven, "--method").Value!, [.. weighings.Select(weighing => At(weighing.Hours, weighing.Grams))], Mass.FromKilograms(balance / 1000), "--oven").Value!;

    private static OvenWeighing At(double hours, double grams) => new(hours, Mass.FromKilograms(grams / 1000));
}
