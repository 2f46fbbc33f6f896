using Rickyard.Core.Wood;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class FiberSaturationTests
{
    [Fact]
    public void Both_rules_meet_the_worked_values()
    {
        foreach (var row in ReferenceTable.Read("Wood/fiber_saturation.csv"))
        {
            Assert.Equal(row.Number("isotherm_percent"), 100 * FiberSaturation.OfIsotherm(row.Number("temp_c")), 0.006);
            Assert.Equal(row.Number("rule_percent"), 100 * FiberSaturation.OfLinearRule(row.Number("temp_c")), 1e-9);
        }
    }

    // Stamm 1964: about 0.1 % per kelvin (from memory); the isotherm falls 0.095 from 20 to 100 °C.
    [Fact]
    public void Isotherm_falls_about_a_tenth_of_a_percent_per_kelvin() =>
        Assert.Equal(0.095, 100 * (FiberSaturation.OfIsotherm(20) - FiberSaturation.OfIsotherm(100)) / 80, 0.001);
}
