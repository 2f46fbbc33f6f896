using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Weather;
using Rickyard.Testing.Planning;
using Xunit;

namespace Rickyard.Core.Tests.Planning;

/// <summary>
/// How the time to 20 % goes with the size of the split. Published: 1.52 for the thickness of red oak boards in kilns (Tschernitz and Simpson 1979, tau = L^n / (a + b p)), where the
/// surface and the air of the charge have their part; 2 where the inside alone resists (diffusion; "loss proportional to the square root of time", Bateman 1939), 1 where the
/// surface alone does. Ends lower it for pieces that are not long beside their width.
/// </summary>
public sealed class SizeExponentTests
{
    /// <summary>From the kiln law's value to that of diffusion.</summary>
    private const double Lowest = 1.5, Highest = 2.0;

    [Theory]
    [InlineData(70, 0.05, 1, 50)]
    [InlineData(40, 0.30, 1, 100)]
    [InlineData(25, 0.35, 0.2, 200)]
    public void Halving_the_width_shortens_the_time_by_about_the_published_power(double celsius, double humidity, double speed, double days)
    {
        var drying = SizeCase.InAir(celsius, humidity, speed);
        double whole = Median(drying, 0.12, days), half = Median(drying, 0.06, days / 2), quarter = Median(drying, 0.03, days / 4);
        double upper = Math.Log2(whole / half), lower = Math.Log2(half / quarter);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{celsius} °C, {humidity:0.00}: 12 cm {whole:0.00} d, 6 cm {half:0.00} d, 3 cm {quarter:0.00} d; exponents {upper:0.00}, {lower:0.00}"));
        Assert.InRange(upper, Lowest, Highest);
        Assert.InRange(lower, Lowest, Highest);
    }

    private static double Median(DryingCase drying, double width, double days)
    {
        var run = new SizeRuns(drying, new(8, 1, 0.1, 0.2), new Dictionary<WeatherName, WeatherScenario>(), CancellationToken.None).Run(width, days, days);
        return Assert.NotNull(new SizeTrial(width, run.Window.FirstDays).DayOf(0.5));
    }
}
