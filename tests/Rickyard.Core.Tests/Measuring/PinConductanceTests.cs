using CsCheck;
using Rickyard.Core.Measuring;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

public sealed class PinConductanceTests
{
    // James 1988, FPL-GTR-6, Table 1, Douglas-fir (coast region), megohm; mark: table. The line may miss by 0.55 points (its own largest residual from 10 to 25 %).
    [Theory]
    [InlineData(0.10, 630)]
    [InlineData(0.12, 120)]
    [InlineData(0.15, 18.6)]
    [InlineData(0.18, 4.6)]
    [InlineData(0.20, 2.14)]
    [InlineData(0.22, 1.10)]
    [InlineData(0.25, 0.46)]
    public void Douglas_fir_conducts_by_the_line(double moisture, double megohm)
    {
        // 10^(1.7282 - 0.12769 log10 R/kilohm) % is the fit; the knee is where it gives 30 %
        var kneeMegohm = Math.Pow(10, (1.7282 - Math.Log10(30)) / 0.12769) / 1000;
        Assert.Equal(moisture, PinConductance.Moisture(kneeMegohm / megohm), 0.006);
    }

    [Fact]
    public void Moisture_undoes_conductance() =>
        Gen.Double[0.005, 1.5].Sample(moisture => Assert.Equal(moisture, PinConductance.Moisture(PinConductance.Of(moisture)), 1e-12), iter: 200);

    // James 1988 (from memory): about 10^2 or less beyond fibre saturation, 10^10 to 10^13 below it
    [Fact]
    public void Rises_little_above_fibre_saturation_and_steeply_below()
    {
        Assert.InRange(PinConductance.Of(1.3) / PinConductance.Of(0.30), 2, 100);
        Assert.True(PinConductance.Of(0.30) / PinConductance.Of(0.01) > 1e10);
    }
}
