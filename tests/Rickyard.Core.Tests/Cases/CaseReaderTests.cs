using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class CaseReaderTests
{
    [Fact]
    public void Whole_case_is_understood()
    {
        var drying = SampleCase.Read(SampleCase.Text);
        Assert.Equal("Oak by the barn", drying.Name);
        Assert.Equal("northern red oak", drying.Species.CommonName);
        Assert.Equal(560, drying.BasicDensity);
        Assert.Equal((SplitShape.Wedge, 0.1524, 0.4064, true), (drying.Split.Shape, Math.Round(drying.Split.Outer, 9), Math.Round(drying.Split.Length, 9), drying.Split.Bark));
        Assert.Equal((60, 0.20), (drying.Pieces, drying.SizeSpread));
        Assert.Equal(new CaseStart(0.68, null, null, false, 15, new LocalDate(2024, 4, 1)), drying.Start);
        Assert.Equal(new SteadyPeriod(null, 25, 0.30, 0.2), Assert.Single(drying.Periods));
        Assert.Equal((37.0, 1.0), (drying.Days, drying.ReportEvery));
        Assert.Equal(SampleCase.Text, drying.SourceText);
    }

    [Fact]
    public void Comments_trailing_commas_and_a_byte_order_mark_are_allowed() =>
        Assert.Empty(CaseReader.Read("\uFEFF// a case\n" + SampleCase.Text.Replace("\"1 day\" }", "\"1 day\", /* daily */ },", StringComparison.Ordinal), "c.json").Problems);

    [Theory]
    [InlineData("""{ "shape": "half round", "length": "16 in", "diameter": "6 in", "bark": true }""", SplitShape.HalfRound)]
    [InlineData("""{ "shape": "round", "length": "12 in", "diameter": "4 in", "bark": true }""", SplitShape.Round)]
    [InlineData("""{ "shape": "block", "length": "14 in", "width": "5 in", "height": "3 in", "bark": false }""", SplitShape.Block)]
    [InlineData("""{ "shape": "inner wedge", "length": "14 in", "inner radius": "2 in", "radius": "7 in", "angle": "45 deg" }""", SplitShape.InnerWedge)]
    public void Every_shape_is_understood(string split, SplitShape shape) =>
        Assert.Equal(shape, SampleCase.Read(SampleCase.With("split", split)).Split.Shape);

    [Fact]
    public void Mass_alone_gives_a_guess_that_says_so_and_weighs_that_at_the_start()
    {
        var drying = SampleCase.Read(SampleCase.With("split", """{ "shape": "wedge", "length": "16 in", "bark": true, "green mass": "4.6 kg" }"""));
        Assert.Equal(4.6, drying.Split.Volume * drying.BasicDensity * 1.68, 1e-9);
        Assert.Contains(drying.Assumptions, said => said.StartsWith("The size is a guess from 4.6 kg green", StringComparison.Ordinal));
    }

    [Fact]
    public void Mass_of_wood_that_is_dry_at_the_start_is_still_its_green_mass()
    {
        var text = SampleCase.Change(SampleCase.With("start.moisture", "\"20 % dry basis\""), "split", """{ "shape": "wedge", "length": "16 in", "green mass": "4.6 kg" }""");
        var drying = SampleCase.Read(text);
        Assert.Equal(4.6, drying.Split.Volume * drying.BasicDensity * (1 + drying.Species.GreenMoisture.Mean), 1e-9);
    }

    [Fact]
    public void Wood_may_bring_its_own_density_and_rate()
    {
        var drying = SampleCase.Read(SampleCase.With("wood", """{ "species": "red oak", "basic density": "0.6 g/cm3", "rate factor": 1.2 }"""));
        Assert.Equal((600, 1.2), (drying.BasicDensity, drying.RateFactor));
    }

    [Fact]
    public void Green_moisture_is_that_of_the_species_and_said()
    {
        var drying = SampleCase.Read(SampleCase.With("start.moisture", "\"green\""));
        Assert.True(drying.Start.IsGreen);
        Assert.Equal(drying.Species.GreenMoisture.Mean, drying.Start.Core);
        Assert.Contains(drying.Assumptions, said => said.StartsWith("Green northern red oak", StringComparison.Ordinal));
    }

    [Fact]
    public void Wet_basis_is_turned_into_dry_basis() => Assert.Equal(2 / 3.0, SampleCase.Read(SampleCase.With("start.moisture", "\"40 % wet basis\"")).Start.Core, 1e-12);

    [Fact]
    public void Core_shell_and_end_are_read_and_a_missing_end_is_as_the_shell()
    {
        var drying = SampleCase.Read(SampleCase.With("start.moisture", """{ "core": "40 % dry basis", "shell": "12 % dry basis" }"""));
        Assert.Equal((0.40, 0.12, 0.12), (drying.Start.Core, drying.Start.Shell, drying.Start.End));
        Assert.Contains(drying.Assumptions, said => said.Contains("end grain", StringComparison.Ordinal));
    }

    [Fact]
    public void Stages_run_one_after_the_other_and_the_last_may_be_open()
    {
        var drying = SampleCase.Read(SampleCase.With("air", """{ "stages": [ { "for": "5 days", "temperature": "158 °F", "humidity": "10 %" }, { "temperature": "20 °C", "humidity": "60 %" } ] }"""));
        Assert.Equal([new SteadyPeriod(5, 70, 0.10, null), new SteadyPeriod(null, 20, 0.60, null)], drying.Periods.Cast<SteadyPeriod>(), (a, b) => Math.Abs(a.Celsius - b.Celsius) < 1e-9 && a.Days == b.Days && a.RelativeHumidity == b.RelativeHumidity);
    }

    [Fact]
    public void Normals_with_a_rack_are_a_rack_period()
    {
        var text = SampleCase.Change(SampleCase.With("air", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "rack", """{ "cover": "tarp", "sun": "full", "wind": "sheltered", "rows": 2 }""");
        Assert.Equal(
            new RackPeriod(null, new(null, "Des Moines, Iowa"), new(RackCover.Tarp, RackSun.Full, RackWind.Sheltered, 2)),
            Assert.Single(SampleCase.Read(text).Periods));
    }

    [Fact]
    public void Weather_without_a_rack_takes_the_usual_one_and_says_so()
    {
        var drying = SampleCase.Read(SampleCase.With("air", """{ "weather": { "file": "x.epw" } }"""));
        Assert.Equal(new RackPeriod(null, new("x.epw", null), new()), Assert.Single(drying.Periods));
        Assert.Contains("The rack's cover was not given: top.", drying.Assumptions);
    }

    [Fact]
    public void History_of_every_kind_is_understood_in_its_order()
    {
        var history = """
            [ { "rack": { "for": "60 days", "normals": { "place": "Des Moines, Iowa" }, "cover": "none" } },
              { "split again": { "into": 2 } },
              { "box": { "for": "5 days", "temperature": "70 °C", "humidity": "10 %", "speed": "1 m/s" } },
              { "rest": { "for": "3 days", "temperature": "20 °C" } },
              { "room": { "for": "1 week", "temperature": "20 °C", "humidity": "45 %" } } ]
            """;
        var text = SampleCase.Change(SampleCase.Change(SampleCase.With("air", null), "run", null), "history", history);
        var drying = SampleCase.Read(text);
        Assert.Collection(
            drying.Periods,
            rack => Assert.Equal(RackCover.None, Assert.IsType<RackPeriod>(rack).Rack.Cover),
            again => Assert.Equal(new SplitAgainPeriod(2), again),
            box => Assert.Equal(new SteadyPeriod(5, 70, 0.10, 1) { InBox = true }, box),
            rest => Assert.Equal(new RestPeriod(3, 20), rest),
            room => Assert.Equal(new SteadyPeriod(7, 20, 0.45, null), room));
        Assert.Equal(75, drying.Days);
    }

    [Fact]
    public void Everything_that_can_be_left_out_is_taken_by_a_default_that_is_said()
    {
        const string Bare = """
            { "wood": { "species": "red oak" }, "split": { "shape": "round", "length": "1 ft", "diameter": "4 in" }, "lot": {},
              "start": { "moisture": "green" }, "air": { "steady": { "temperature": "20 °C", "humidity": "50 %" } }, "run": { "for": "2 weeks" } }
            """;
        var drying = CaseReader.Read(Bare, "barn/oak 7.json").Value!;
        Assert.Equal("oak 7", drying.Name);
        Assert.False(drying.Start.IsDated);
        foreach (var part in new[] { "bark", "Basic density", "temperature at the start", "speed of the air", "number of pieces", "sizes of the lot", "How often to report", "Green" })
            Assert.Contains(drying.Assumptions, said => said.Contains(part, StringComparison.Ordinal));
    }

    [Fact]
    public void Case_that_says_everything_assumes_nothing_but_the_density() =>
        Assert.StartsWith("Basic density was not given", Assert.Single(SampleCase.Read(SampleCase.Text).Assumptions), StringComparison.Ordinal);

    [Fact]
    public void Periods_that_do_not_fill_the_run_are_said()
    {
        var stages = """{ "stages": [ { "for": "5 days", "temperature": "20 °C", "humidity": "10 %" } ] }""";
        Assert.Contains(SampleCase.Read(SampleCase.With("air", stages)).Assumptions, said => said.Contains("the last one goes on to the end", StringComparison.Ordinal));
        Assert.Contains(SampleCase.Read(SampleCase.With("air", stages.Replace("5 days", "90 days", StringComparison.Ordinal))).Assumptions, said => said.Contains("is not run", StringComparison.Ordinal));
    }
}
