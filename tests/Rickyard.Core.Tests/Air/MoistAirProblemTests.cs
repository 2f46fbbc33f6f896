using Rickyard.Core.Air;
using Rickyard.Core.Quantities;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class MoistAirProblemTests
{
    private static readonly Pressure Sea = Pressure.StandardAtmosphere;

    [Fact]
    public void Saturated_air_at_110_degrees_is_refused_with_the_ceiling_named()
    {
        var problem = Assert.Single(MoistAir.FromRelativeHumidity(Temperature.FromCelsius(110), RelativeHumidity.FromFraction(1), Sea).Problems);
        Assert.Equal("relative humidity", problem.Field);
        Assert.Contains("101.3 kPa", problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("below 70.6 %", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(110, 0.70, true)]
    [InlineData(110, 0.71, false)]
    [InlineData(99.9, 1, true)]
    public void Air_near_boiling_is_allowed_up_to_its_ceiling(double celsius, double humidity, bool allowed) => Assert.Equal(
        allowed, MoistAir.FromRelativeHumidity(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), Sea).TryGet(out _));

    [Fact]
    public void Dew_point_above_the_air_is_refused()
    {
        var problem = Assert.Single(MoistAir.FromDewPoint(Temperature.FromCelsius(20), Temperature.FromCelsius(21), Sea).Problems);
        Assert.Equal("dew point", problem.Field);
        Assert.Contains("106.", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Wet_bulb_above_the_dry_bulb_is_refused() => Assert.Contains("above the dry bulb", WrongWithWetBulb(20, 22), StringComparison.Ordinal);

    [Fact]
    public void Wet_bulb_colder_than_bone_dry_air_makes_it_is_refused() => Assert.Contains("bone-dry", WrongWithWetBulb(40, 5), StringComparison.Ordinal);

    [Fact]
    public void Temperature_and_pressure_out_of_range_are_both_told() =>
        Assert.Equal(["temperature", "pressure"], MoistAir.FromRelativeHumidity(
            Temperature.FromCelsius(300), RelativeHumidity.FromFraction(0.1), Pressure.FromPascals(0)).Problems.Select(problem => problem.Field));

    [Fact]
    public void Constructor_given_an_impossible_state_throws() =>
        Assert.Throws<ArgumentException>(() => new MoistAir(Temperature.FromCelsius(20), Pressure.FromPascals(3000), Sea));

    private static string WrongWithWetBulb(double dry, double wet) =>
        Assert.Single(MoistAir.FromWetBulb(Temperature.FromCelsius(dry), Temperature.FromCelsius(wet), Sea).Problems).WhatIsWrong;
}
