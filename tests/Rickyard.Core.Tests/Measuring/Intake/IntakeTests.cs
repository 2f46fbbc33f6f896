using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Measuring.Observed;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Intake;

public sealed class IntakeTests
{
    [Theory]
    [InlineData("2026-05-03", 49.5)]
    [InlineData("2026-05-03T17:30", 49 + 17.5 / 24)]
    [InlineData("2026-05-03 06:00", 49.25)]
    [InlineData("2027-05-08", 419.5)]
    public void Date_alone_is_noon_and_an_hour_counts_from_midnight(string date, double day) =>
        Assert.Equal(day, Assert.Single(OakIntake.Log($"{date},,pin,core,24,%,,,").Kept).From.Day, 1e-9);

    // 1 lb = 0.45359237 kg exactly, 1 oz a sixteenth of it.
    [Theory]
    [InlineData("2.31", "kg", 2.31, 0.00693)]
    [InlineData("2310", "g", 2.31, 0.00693)]
    [InlineData("5 lb 3 oz", "", 2.3530104, 0.0141747)]
    [InlineData("5.1", "lb", 2.3133211, 0.0226796)]
    [InlineData("82", "oz", 2.3246609, 0.0141747)]
    [InlineData("2.3", "kg", 2.3, 0.05)]
    public void Mass_is_read_in_its_unit_with_half_its_last_digit_or_three_in_a_thousand(string value, string unit, double kilograms, double spread)
    {
        var mass = Assert.IsType<MassObservation>(Assert.Single(OakIntake.Log($"2026-05-03,7,weighing,,{value},{unit},,,").Kept));
        Assert.Equal(kilograms, mass.Kilograms, 1e-6);
        Assert.Equal(spread, mass.Spread, 1e-6);
    }

    [Theory]
    [InlineData("end grain", PinPlace.EndGrain, Pins.UsualDepth, false)]
    [InlineData("end", PinPlace.EndGrain, Pins.UsualDepth, false)]
    [InlineData("side", PinPlace.Side, Pins.UsualDepth, false)]
    [InlineData("Split Face", PinPlace.SplitFace, Pins.UsualDepth, false)]
    [InlineData("face", PinPlace.SplitFace, Pins.UsualDepth, false)]
    [InlineData("core", PinPlace.FreshCore, Pins.UsualDepth, false)]
    [InlineData("fresh core", PinPlace.FreshCore, Pins.UsualDepth, false)]
    [InlineData("depth 20 mm", PinPlace.SplitFace, 0.020, false)]
    [InlineData("insulated 1 in", PinPlace.SplitFace, 0.0254, true)]
    public void Place_of_the_pins_is_understood(string place, PinPlace wanted, double depth, bool insulated)
    {
        var pins = Assert.IsType<PinObservation>(Assert.Single(OakIntake.Log($"2026-05-03,,pin,{place},24,%,,,").Kept)).Pins;
        Assert.Equal((wanted, insulated), (pins.Place, pins.Insulated));
        Assert.Equal(depth, pins.Depth, 1e-9);
    }

    [Theory]
    [InlineData("24", "", 0.24, ShownRange.Number)]
    [InlineData("24", "% dry basis", 0.24, ShownRange.Number)]
    [InlineData("20", "% wet basis", 0.25, ShownRange.Number)]
    [InlineData(">40", "%", 0.40, ShownRange.Over)]
    [InlineData("<6", "%", 0.06, ShownRange.Under)]
    public void Display_is_read(string value, string unit, double shown, ShownRange range)
    {
        var reading = Assert.IsType<PinObservation>(Assert.Single(OakIntake.Log($"2026-05-03,,pin,core,{value},{unit},,12 °C,").Kept)).Reading;
        Assert.Equal((range, MeterScale.DouglasFir, 12.0), (reading.Range, reading.Scale, reading.WoodCelsius));
        Assert.Equal(shown, reading.Shown, 1e-12);
    }

    [Theory]
    [InlineData("over", ShownRange.Over)]
    [InlineData("under", ShownRange.Under)]
    public void Display_without_a_number_is_a_reading_too(string value, ShownRange range) =>
        Assert.Equal(range, Assert.IsType<PinObservation>(Assert.Single(OakIntake.Log($"2026-05-03,,pin,core,{value},%,,,").Kept)).Reading.Range);

    [Fact]
    public void Wet_basis_of_an_oven_is_converted_where_it_is_said() =>
        Assert.Equal(0.25, Assert.IsType<OvenObservation>(Assert.Single(OakIntake.Log("2026-05-03,,oven,whole,20,% wet basis,,,").Kept)).Moisture, 1e-12);

    [Theory]
    [InlineData("checks,yes", WoodSign.Checks, true)]
    [InlineData("bark loose,no", WoodSign.BarkLoose, false)]
    [InlineData(",rings", WoodSign.Rings, true)]
    [InlineData("bubbling ends,yes", WoodSign.BubblingEnds, true)]
    [InlineData("heavy,no", WoodSign.Heavy, false)]
    public void Sign_is_understood(string cells, WoodSign sign, bool seen)
    {
        var found = Assert.IsType<SignObservation>(Assert.Single(OakIntake.Log($"2026-05-03,,sign,{cells},,,,").Kept));
        Assert.Equal((sign, seen), (found.Sign, found.Seen));
    }

    [Fact]
    public void Spreadsheet_in_another_order_with_semicolons_and_quotes_reads_alike()
    {
        const string Table = "\uFEFF# of the yard\r\nVALUE;Kind;date;Place;weather;note\r\n\r\n\"24,5\";pin;2026-05-03;core;fine;\"a \"\"dry\"\" one; split\"\r\n";
        var log = OakIntake.Read(Table).Value!;
        var pin = Assert.IsType<PinObservation>(Assert.Single(log.Kept));
        Assert.Equal((0.245, 4), (Math.Round(pin.Reading.Shown, 9), pin.From.Row));
        Assert.Contains("\"weather\"", Assert.Single(log.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_say_what_where_and_when() =>
        Assert.Equal("12 % on the end grain, 3 May 2026", Assert.Single(OakIntake.Log("2026-05-03,,pin,end grain,12,%,,,").Kept).From.Words);

    [Fact]
    public void Same_row_of_a_marked_split_twice_counts_once()
    {
        var log = OakIntake.Log("2026-05-03,7,pin,core,24,%,,,", "2026-05-03,7,pin,core,24,%,,,");
        Assert.Single(log.Kept);
        Assert.Contains("same as line 2", Assert.Single(log.LeftOut).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Unlike_values_of_one_place_are_both_kept_and_told()
    {
        var log = OakIntake.Log("2026-05-03,7,pin,core,24,%,,,", "2026-05-03,7,pin,core,28,%,,,");
        Assert.Equal(2, log.Kept.Count);
        Assert.Contains("2 and 3", Assert.Single(log.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Mass_that_gained_more_than_rain_gives_is_left_out()
    {
        var log = OakIntake.Log("2026-04-24,7,mass,,2.31,kg,,,", "2026-05-24,7,mass,,2.20,kg,,,", "2026-06-24,7,mass,,2.80,kg,,,", "2026-07-24,7,mass,,2.05,kg,,,");
        Assert.Equal([2, 3, 5], log.Kept.Select(kept => kept.From.Row));
        Assert.Contains("heavier", Assert.Single(log.LeftOut).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Weighing_after_a_shower_is_kept() =>
        Assert.Equal(2, OakIntake.Log("2026-04-24,7,mass,,2.31,kg,,,", "2026-05-24,7,mass,,2.36,kg,,,").Kept.Count);
}
