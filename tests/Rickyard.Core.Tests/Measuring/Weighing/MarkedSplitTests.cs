using Rickyard.Core.Measuring.Weighing;
using Rickyard.Core.Quantities;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Weighing;

public sealed class MarkedSplitTests
{
    private const double Pound = 0.45359237;

    [Fact]
    public void Whole_table_of_errors_comes_out()
    {
        var rows = ReferenceTable.Read("Measuring/weight_tracking_errors.csv");
        Assert.Equal(12, rows.Count);
        Assert.All(rows, row =>
        {
            var split = Split(10, row.Number("start_mc_pct_db"));
            var now = split.MassAt(MoistureContent.FromPercentDry(row.Number("current_mc_pct_db")));
            Assert.Equal(row.Number("mc_error_if_start_mc_wrong_by_5_points"), 100 * split.ErrorFromStart(now, 0.05), 0.0051);
            Assert.Equal(row.Number("mc_error_if_weight_wrong_by_1_pct"), 100 * split.ErrorFromWeighing(now, 0.01), 0.0051);
            Assert.Equal(row.Number("weight_lost_pct_of_start"), 100 * (1 - now.Kilograms / 10), 0.0051);
        });
    }

    // W1 Purdue FNR-156 (text, second-hand); W5 hearth.com thread 22771 (text, user data); W6 AH-188 ch. 6 (from memory); W9 small-kiln owner manual (text).
    [Theory]
    [InlineData(136, 100, 36, 0.05)]
    [InlineData(10, 6.9, 44.93, 0.1)]
    [InlineData(98.55, 59.20, 66.5, 0.05)]
    [InlineData(2.5, 1.7, 47.06, 0.01)]
    [InlineData(2.3, 1.6, 43.75, 0.01)]
    public void Section_tells_its_moisture(double wet, double dry, double percent, double within) => Assert.Equal(percent, Section(wet, dry).Moisture.PercentDry, within);

    // W2 and W3 University of Alaska firewood symposium (text, second-hand): 5 lb holding 1 lb of water. W4 wood fuel guide (text): 50 kg of wood and 50 kg of water.
    [Fact]
    public void Both_bases_come_out()
    {
        Assert.Equal((25, 20), (Math.Round(Section(5, 4).Moisture.PercentDry, 2), Math.Round(Section(5, 4).Moisture.PercentWet, 2)));
        Assert.Equal((100, 50), (Math.Round(Section(100, 50).Moisture.PercentDry, 2), Math.Round(Section(100, 50).Moisture.PercentWet, 2)));
    }

    // W9: 45.4 % (text, small-kiln owner manual).
    [Fact]
    public void Two_sections_give_their_mean_and_half_of_what_lies_between()
    {
        var start = StartMoisture.FromSections([Section(2.5, 1.7), Section(2.3, 1.6)]);
        Assert.Equal(45.4, start.Moisture.PercentDry, 0.01);
        Assert.Equal(0.0165, start.Error, 0.0001);
    }

    // The chain of the kiln manual, W6 to W8 (AH-188 ch. 6, from memory; Drying Oak Lumber, step 3B).
    [Fact]
    public void Kiln_sample_is_followed_from_section_to_present_moisture()
    {
        Assert.Equal(66.5, Section(98.55, 59.20).Moisture.PercentDry, 0.05);
        var sample = Split(4.46 * Pound, 65.0);
        Assert.Equal(2.70, sample.OvenDry.Pounds, 0.005);
        Assert.Equal(53.3, 100 * (4.14 / 2.70 - 1), 0.05);
        Assert.Equal(53.3, 100 * sample.MoistureAt(Mass.FromKilograms(4.14 * Pound)), 0.2); // 2.703 lb instead of the rounded 2.70
    }

    // W10 and W11 firewood forum thread 7355 (text, user data): 14.8 lb at an assumed 80 %, then 9.2 lb.
    [Fact]
    public void Tracked_split_comes_out()
    {
        var split = Split(14.8 * Pound, 80);
        Assert.Equal(8.222, split.OvenDry.Pounds, 0.001);
        Assert.Equal(11.9, 100 * split.MoistureAt(Mass.FromKilograms(9.2 * Pound)), 0.05);
    }

    // W12, derived.
    [Fact]
    public void Wrong_start_shrinks_on_the_way()
    {
        var split = Split(10, 70);
        Assert.Equal(3.38, 100 * split.ErrorFromStart(split.MassAt(MoistureContent.FromPercentDry(15)), 0.05), 0.01);
    }

    [Fact]
    public void Mass_at_a_moisture_and_back()
    {
        var split = Split(3.2, 72);
        Assert.Equal(0.2, split.MoistureAt(split.MassAt(MoistureContent.FromFraction(0.2))), 1e-12);
        var (lightest, heaviest) = split.MassRange(MoistureContent.FromFraction(0.2));
        Assert.True(lightest.Kilograms < split.MassAt(MoistureContent.FromFraction(0.2)).Kilograms && split.MassAt(MoistureContent.FromFraction(0.2)).Kilograms < heaviest.Kilograms);
    }

    [Fact]
    public void Masses_that_cannot_be_are_named_all_at_once()
    {
        var problems = Split(10, 60).Problems([Mass.FromKilograms(8), Mass.FromKilograms(8.7), Mass.FromKilograms(8.9), Mass.FromKilograms(6.2)], "--mass");
        Assert.Equal(2, problems.Count);
        Assert.Contains("11 % more", problems[0].WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("lighter than the split would be oven-dry", problems[1].WhatIsWrong, StringComparison.Ordinal);
        Assert.Empty(Split(10, 60).Problems([Mass.FromKilograms(8), Mass.FromKilograms(8.7)], "--mass"));
    }

    [Theory]
    [InlineData(59, 98, "heavier dry")]
    [InlineData(59, 0, "nothing")]
    [InlineData(700, 100, "no wood holds")]
    public void Section_that_cannot_be_is_refused(double wet, double dry, string words) =>
        Assert.Contains(words, Assert.Single(MoistureSection.Make(Grams(wet), Grams(dry), "--section").Problems).WhatIsWrong, StringComparison.Ordinal);

    private static MarkedSplit Split(double kilograms, double percent) => new(Mass.FromKilograms(kilograms), StartMoisture.Assumed(MoistureContent.FromPercentDry(percent)));

    private static MoistureSection Section(double wet, double dry) => MoistureSection.Make(Grams(wet), Grams(dry), "--section").Value!;

    private static Mass Grams(double value) => Mass.FromKilograms(value / 1000);
}
