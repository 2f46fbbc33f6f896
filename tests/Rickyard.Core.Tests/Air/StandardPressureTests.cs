using Rickyard.Core.Air;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class StandardPressureTests
{
    // ASHRAE Handbook Fundamentals 2017, ch. 1, Table 1, printed to 1 Pa.
    [Theory]
    [InlineData(0, 101325)]
    [InlineData(500, 95461)]
    [InlineData(1000, 89875)]
    public void Pressure_meets_the_handbook_table(double metres, double pascals) => Assert.Equal(pascals, StandardPressure.AtElevation(metres).Pascals, 0.7);

    [Theory]
    [InlineData(-5001)]
    [InlineData(11001)]
    [InlineData(double.NaN)]
    public void Elevation_outside_the_formula_is_refused(double metres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardPressure.AtElevation(metres));
}
