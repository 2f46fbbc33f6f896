using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class FrozenWoodTests
{
    private const double Hours = 3600, Density = 560;

    [Fact]
    public void Frozen_green_wood_warms_later_by_its_heat_of_fusion_and_dry_wood_does_not()
    {
        double green = Minutes(0.9, -10), greenThawed = Minutes(0.9, 0), dry = Minutes(0.2, -10), dryThawed = Minutes(0.2, 0);
        Assert.InRange(green / greenThawed, 1.15, 1.8);
        Assert.InRange(dry / dryThawed, 1.0, 1.15);
    }

    // Neumann's solution of the thawing slab (Carslaw and Jaeger, Conduction of Heat in Solids, ch. 11, from memory): the front is at X = 2 λ √(α t), with
    // λ exp(λ²) erf(λ) = Ste/√π and Ste = c T_face / L. It has a sharp front at one temperature; here the wood melts over two kelvins, so it may be
    // off by their share of the face's temperature and 4 % (conductivity rises by 15 % from 0 to 60 °C; the formula takes its mean). The ten cells of a forecast, spaced for smooth fields and not for fronts, thaw a tenth too early.
    [Theory]
    [InlineData(20, false)]
    [InlineData(60, false)]
    [InlineData(20, true)]
    [InlineData(60, true)]
    public void Slab_thaws_as_in_the_solution_of_Neumann(double face, bool asForecast)
    {
        const double moisture = 0.9, thickness = 0.04;
        var content = HeatContent.Near(moisture, -2);
        var stefan = content.Thawed * face / (content.At(0) - content.At(-2));
        var lambda = Brent.FindRoot(l => l * Math.Exp(l * l) * SpecialFunctions.Erf(l) - stefan / Math.Sqrt(Math.PI), 0, 3);
        var diffusivity = WoodThermal.TransverseConductivity(Density, moisture, Temperature.IcePointKelvins + face / 2) / (Density * content.Thawed);
        var seconds = thickness * thickness / 4 / (4 * lambda * lambda * diffusivity);
        var slab = Slab(thickness, moisture, -2, Held(face), asForecast ? null : 60);
        Assert.Equal(seconds, slab.TimeToReach(-0.02, 60, 400 * Hours)!.Value, (asForecast ? 0.12 : 2 / face + 0.04) * seconds);
    }

    [Fact]
    public void Frozen_wood_ends_at_the_temperature_of_its_air()
    {
        var split = Slab(0.04, 0.9, -20, Held(40));
        split.AdvanceTo(200 * Hours);
        Assert.All(split.Celsius.ToArray(), celsius => Assert.Equal(40, celsius, 0.2));
    }

    // Thin cells of a wedge melt within a step; none may be carried beyond what lies on either side of it.
    [Theory]
    [InlineData(0.05, 0.1)]
    [InlineData(0.2, 0.1)]
    [InlineData(1, 0.3)]
    [InlineData(5, 0.9)]
    public void Frozen_wedge_stays_between_its_start_and_its_air(double speed, double humidity)
    {
        var split = Wedge(speed, humidity);
        for (var minute = 1; minute <= 180; minute++)
        {
            split.AdvanceTo(60 * minute);
            Assert.All(split.Celsius.ToArray(), celsius => Assert.InRange(celsius, -15.01, 75.01));
        }
    }

    [Fact]
    public void Short_steps_and_long_ones_thaw_alike()
    {
        double often = Wedge(1, 0.3).TimeToReach(60, 5, 24 * Hours)!.Value, seldom = Wedge(1, 0.3).TimeToReach(60, 120, 24 * Hours)!.Value;
        Assert.Equal(often, seldom, 0.02 * often);
    }

    [Fact]
    public void Field_of_moisture_is_where_it_starts()
    {
        var grid = SplitGrid.For(Split.Block(Length.FromMetres(0.1), Length.FromMetres(0.1), Length.FromMetres(0.3)));
        double[] moisture = [.. Enumerable.Range(0, grid.Count).Select(cell => 0.2 + 0.5 * cell / grid.Count)];
        var split = new HeatedSplit(grid, Table, new(Density), AirSeries.Steady(Held(20)), moisture, 20);
        Assert.Equal(moisture, split.Moisture.ToArray());
    }

    private static MobilityTable Table => MobilityTable.Of(new(Density, 1e-9));

    /// <summary>Air so lively that the face is as warm as it, and so humid that nothing evaporates or condenses to speak of.</summary>
    private static Surroundings Held(double celsius) => new(celsius + Temperature.IcePointKelvins, SaturationPressure.Of(celsius + Temperature.IcePointKelvins), 5000);

    private static HeatedSplit Wedge(double speed, double humidity)
    {
        var kelvins = 75 + Temperature.IcePointKelvins;
        Surroundings air = new(kelvins, humidity * SaturationPressure.Of(kelvins), SurfaceTransfer.ConvectiveCoefficient(speed, 0.08, kelvins));
        return new(SplitGrid.For(Split.Wedge(Length.FromMetres(0.07), Angle.FromDegrees(60), Length.FromInches(16))), Table, new(Density), AirSeries.Steady(air), 0.7, -15);
    }

    private static HeatedSplit Slab(double thickness, double moisture, double celsius, Surroundings air, int? cells = null)
    {
        var slab = Split.Block(Length.FromMetres(1.5), Length.FromMetres(thickness), Length.FromMetres(1.5));
        return new(cells is { } count ? SplitGrid.Uniform(slab, 2, count, 2) : SplitGrid.For(slab), Table, new(Density), AirSeries.Steady(air), moisture, celsius);
    }

    /// <summary>Until the core of a 10 cm square in a hot box is at 60 °C. [min]</summary>
    private static double Minutes(double moisture, double celsius)
    {
        var kelvins = 75 + Temperature.IcePointKelvins;
        Surroundings air = new(kelvins, 0.5 * SaturationPressure.Of(kelvins), SurfaceTransfer.ConvectiveCoefficient(2, 0.1, kelvins));
        var grid = SplitGrid.For(Split.Block(Length.FromMetres(0.1), Length.FromMetres(0.1), Length.FromMetres(0.4)));
        return new HeatedSplit(grid, Table, new(Density), AirSeries.Steady(air), moisture, celsius).TimeToReach(60, 60, 24 * Hours)!.Value / 60;
    }
}
