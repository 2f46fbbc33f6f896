using Rickyard.Core.Verification;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Verification;

/// <summary>Tschernitz and Simpson (1979), restated, with a worked example published in an open notebook.</summary>
public class RedOakDryingLawTests
{
    /// <summary>Worked out by the source with 191.8 mmHg, where steam tables have 192.3 to 192.5: 0.3 % in the time.</summary>
    [Fact]
    public void Time_constant_of_an_inch_at_150_fahrenheit_is_the_printed_one() => Assert.Equal(3.03, RedOakDryingLaw.TimeConstant(1, 65.56), 0.01);

    /// <summary>1.5 in, 100 to 14 % d.b., 72 °F and 72 %: printed 113.4 d. The end is half a point above equilibrium, so a tenth of a point is worth 5 d.</summary>
    [Fact]
    public void Worked_example_is_met_within_two_tenths_of_a_point_of_equilibrium()
    {
        const double celsius = 22.22;
        var equilibrium = SorptionIsotherm.At(celsius).Moisture(0.72);
        var (sooner, later) = (RedOakDryingLaw.Days(1.5, celsius, 1, 0.14, equilibrium - 0.002), RedOakDryingLaw.Days(1.5, celsius, 1, 0.14, equilibrium + 0.002));
        Assert.InRange(113.4, sooner, later);
    }
}
