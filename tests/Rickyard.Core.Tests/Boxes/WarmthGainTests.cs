using Rickyard.Core.Boxes;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

public sealed class WarmthGainTests
{
    // The common shortcut, "7 to 18 times faster at 70 °C than at 30 to 16 °C", is the ratio of saturation pressures: steam tables, 31.2 kPa over 4.25 and 1.82 kPa.
    [Theory]
    [InlineData(16, 17.2)]
    [InlineData(30, 7.3)]
    public void Saturation_ratio_is_that_of_the_steam_tables(double from, double ratio) => Assert.Equal(ratio, Run(from, 70, 0.6).SaturationRatio, 0.1);

    [Fact]
    public void Warmed_air_keeps_its_vapour_and_so_drives_harder_than_saturation_says()
    {
        var gain = Run(20, 70, 0.6);
        Assert.Equal(gain.From.VaporPressure, gain.To.VaporPressure, 1e-6);
        Assert.True(gain.DeficitRatio > gain.SaturationRatio);
    }

    [Fact]
    public void Time_ratio_is_neither_vapour_ratio_and_the_kiln_law_is_below_it()
    {
        var gain = Run(20, 70, 0.3, 0.3);
        Assert.Equal(gain.SaturationRatio, gain.DeficitRatio, 1e-9);
        Assert.InRange(gain.CoreTimeRatio!.Value, gain.KilnLaw!.Value, gain.SaturationRatio);
        Assert.InRange(gain.MeanTimeRatio!.Value, gain.KilnLaw!.Value, gain.SaturationRatio);
        Assert.True(gain.FreeRatio < gain.BoundRatio);
    }

    // Common practice, no source: when the core of a 7 cm wedge reaches 19 % at 70 °C its mean is near 10 %.
    [Fact]
    public void Mean_is_near_ten_percent_when_the_core_of_a_seven_centimetre_wedge_is_at_nineteen() => Assert.Equal(0.10, Run(20, 70, 0.6).To.MeanWhenCoreThere!.Value, 0.02);

    [Fact]
    public void Same_air_twice_wins_nothing()
    {
        var gain = Run(40, 40, 0.4);
        Assert.Equal([1, 1, 1, 1], [gain.SaturationRatio, gain.DeficitRatio, gain.CoreTimeRatio!.Value, gain.MeanTimeRatio!.Value], (one, other) => Math.Abs(one - other) < 1e-9);
    }

    [Fact]
    public void Air_that_is_too_humid_for_the_target_has_no_time()
    {
        var gain = Run(20, 70, 0.95);
        Assert.Null(gain.From.DaysToCore);
        Assert.Null(gain.CoreTimeRatio);
        Assert.NotNull(gain.To.DaysToCore);
    }

    private static WarmthGain Run(double from, double to, double humidity, double? toHumidity = null)
    {
        var oak = SpeciesCatalogue.Find("post oak").Value!;
        return WarmthGain.Run(new()
        {
            Split = Split.Wedge(Length.FromMetres(0.07), Angle.FromDegrees(60), Length.FromInches(16)),
            Wood = new(oak.BasicDensity.Value.KilogramsPerCubicMetre, Math.Exp(oak.RateFactor.MeanLog)),
            Anatomy = oak.Anatomy,
            StartMoisture = oak.GreenMoisture.Mean,
            Target = 0.19,
            FromCelsius = from,
            ToCelsius = to,
            FromHumidity = humidity,
            ToHumidity = toHumidity,
            Speed = 1,
        }, CancellationToken.None);
    }
}
