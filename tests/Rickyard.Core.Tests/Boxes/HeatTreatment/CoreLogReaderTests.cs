using Rickyard.Core.Boxes.HeatTreatment;
using Xunit;

namespace Rickyard.Core.Tests.Boxes.HeatTreatment;

public sealed class CoreLogReaderTests
{
    [Theory]
    [InlineData("time,core (°C)\n2026-03-04 23:58:30,60\n2026-03-05 00:00:00,61", 90)]
    [InlineData("Timestamp;Core 1 [°C]\n04.03.2026 23:58;60,5\n05.03.2026 00:02;61,5", 240)]
    [InlineData("date,time,probe_1_f\n3/4/2026,11:58 PM,140\n3/5/2026,12:03 AM,141", 300)]
    [InlineData("date,time,probe_1_f\n4/3/2026,23:58,140\n5/3/2026,00:03,141", 300)]
    [InlineData("elapsed (min),core C\n0,60\n4.5,61", 270)]
    [InlineData("minutes,core °C\n10,60\n12,61", 120)]
    [InlineData("hours,core °C\n0.5,60\n0.55,61", 180)]
    [InlineData("Time,core °C\n23:59:50,60\n0:00:20,61", 30)]
    [InlineData("time,core °C\n2026-03-04T10:00:00+01:00,60\n2026-03-04T09:05:00Z,61", 300)]
    [InlineData("Logger 7\nstarted by hand\n\ntime,core °C\n10:00,60\n# lid opened\n10:04,61\n", 240)]
    public void Time_is_read_as_loggers_write_it(string text, double seconds) => Assert.Equal([0, seconds], Read(text).Seconds, (one, other) => Math.Abs(one - other) < 1e-6);

    [Fact]
    public void Fahrenheit_becomes_Celsius() => Assert.Equal([60, 71.1], Read("min,core °F\n0,140\n5,160").Celsius[0], (one, other) => Math.Abs(one - other) < 0.02);

    [Fact]
    public void Air_is_kept_apart_and_other_columns_are_told()
    {
        var log = Read("min,core 1 °C,box air °C,heater °C,battery V,core 2 °C\n0,50,70,200,3,51\n5,51,70,200,3,52");
        Assert.Equal(["core 1 °C", "core 2 °C"], log.Sensors);
        Assert.Equal(["box air °C"], log.AirSensors);
        Assert.Contains("heater °C, battery V", Assert.Single(log.Notes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1372")]
    [InlineData("-200")]
    [InlineData("open")]
    [InlineData("")]
    public void Reading_that_cannot_be_is_none(string cell)
    {
        var log = Read($"min,core 1 °C,core 2 °C\n0,65,66\n5,{cell},66");
        Assert.True(double.IsNaN(log.Coldest(1)));
        Assert.NotEmpty(log.Notes);
    }

    [Fact]
    public void Readings_of_the_same_minute_become_the_coldest_of_them() => Assert.Equal([60, 62], Read("time,core °C\n10:00,61\n10:00,60\n10:01,62").Celsius[0]);

    [Theory]
    [InlineData("", "No header line")]
    [InlineData("time,humidity %\n10:00,60", "No header line")]
    [InlineData("time,core °C\n", "no readings")]
    [InlineData("time,core 1 °C,core 2\n10:00,60,61", "does not say °C or °F")]
    [InlineData("time,core °C\n10:00,60\n10:05", "1 fields")]
    [InlineData("time,core °C\n2026-03-04 10:05,60\n2026-03-04 10:00,61", "goes back")]
    [InlineData("time,core °C\n2026-03-04 10:05,60\nsoon,61", "\"soon\" is not a time")]
    [InlineData("time,core °C\n2026-03-04,60\n2026-03-05,61", "is not a time")]
    public void Damage_is_told_with_its_place(string text, string what) =>
        Assert.Contains(CoreLogReader.Read("log.csv", text).Problems, problem => problem.WhatIsWrong.Contains(what, StringComparison.Ordinal) && problem.Field.StartsWith("log.csv", StringComparison.Ordinal));

    private static CoreLog Read(string text)
    {
        var read = CoreLogReader.Read("log.csv", text);
        Assert.Empty(read.Problems);
        return read.Value!;
    }
}
