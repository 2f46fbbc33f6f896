using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

/// <summary>Observed orders: how much smaller the error becomes with cells or steps half the size.</summary>
public sealed class ConvergenceTests(ITestOutputHelper output)
{
    private const double Diffusivity = 1e-9, Half = 0.05;
    private static readonly Length Width = Length.FromMetres(2 * Half);

    // start and solution: product of cosines over the block, falling as exp(−π² Fo/4) along each of the three axes; Fo 0.2
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Space_is_of_second_order_on_a_decaying_cosine(bool growing)
    {
        double[] errors = [.. new[] { 1, 2, 4 }.Select(factor => CosineError(growing
            ? SplitGrid.For(Split.Block(Width, Width, Width), new GridResolution(6, 6, 6, 0.003, 1.6).Refined(factor))
            : SplitGrid.Uniform(Split.Block(Width, Width, Width), 6 * factor, 6 * factor, 6 * factor)))];
        var orders = Orders(errors);
        output.WriteLine($"space, {(growing ? "growing" : "equal")} cells: errors {string.Join(", ", errors.Select(e => e.ToString("0.0e0")))}, orders {orders[0]:0.00}, {orders[1]:0.00}");
        Assert.All(orders, order => Assert.True(order >= 1.8));
    }

    // the same cosine in 8³ cells and fixed steps, against steps an eighth of the smallest
    [Fact]
    public void Time_is_of_second_order_on_a_decaying_cosine()
    {
        var grid = SplitGrid.Uniform(Split.Block(Width, Width, Width), 8, 8, 8);
        var finish = 0.2 * Half * Half / Diffusivity;
        double Mean(int steps) => Cosine(grid, new(1e9, 1e9, finish / steps, finish / steps, AllowNegative: true));
        double[] errors = [.. new[] { 8, 16, 32 }.Select(steps => Math.Abs(Mean(steps) - Mean(256)))];
        var orders = Orders(errors);
        output.WriteLine($"time, linear: errors {string.Join(", ", errors.Select(e => e.ToString("0.0e0")))}, orders {orders[0]:0.00}, {orders[1]:0.00}");
        Assert.All(orders, order => Assert.True(order >= 1.8));
    }

    // the real law: an oak wedge in a room from 20 %, all that bends included; the temperature of the body is of first order and its Newton stops at 0.2 K
    [Fact]
    public void Time_is_of_first_order_at_least_for_wood_in_a_room()
    {
        double Mean(int steps)
        {
            var finish = 20 * 86400.0;
            var solver = Wedge(GridResolution.Default, new(1e9, 1e9, finish / steps, finish / steps));
            solver.AdvanceTo(finish);
            return solver.Read(0).Mean;
        }

        var exact = Mean(4096);
        double[] errors = [.. new[] { 16, 32, 64, 128 }.Select(steps => Math.Abs(Mean(steps) - exact))];
        var orders = Orders(errors);
        output.WriteLine($"time, wood: errors {string.Join(", ", errors.Select(e => e.ToString("0.0e0")))}, orders {string.Join(", ", orders.Select(o => o.ToString("0.00")))}");
        Assert.True(Math.Log2(errors[0] / errors[^1]) / 3 >= 0.9);
    }

    [Fact]
    public void Finer_grids_agree_on_wood_in_a_room()
    {
        SplitReading Read(int factor)
        {
            var solver = Wedge(GridResolution.Default.Refined(factor), new(1e-4, 2e-4, 60, 86400));
            solver.AdvanceTo(40 * 86400.0);
            return solver.Read(0);
        }

        SplitReading coarse = Read(1), fine = Read(2);
        output.WriteLine($"default grid against twice as fine, wood: mean {coarse.Mean:0.0000} {fine.Mean:0.0000}, core {coarse.Core:0.0000} {fine.Core:0.0000}, shell {coarse.Shell:0.0000} {fine.Shell:0.0000}");
        Assert.Equal(fine.Mean, coarse.Mean, 0.003);
        Assert.Equal(fine.Core, coarse.Core, 0.005);
        Assert.Equal(fine.Shell, coarse.Shell, 0.007);
    }

    private static SplitSolver Wedge(GridResolution resolution, StepControl control)
    {
        var split = Split.Wedge(Length.FromMetres(0.1), Angle.FromDegrees(60), Length.FromMetres(0.4));
        var air = IndoorAir.Surroundings(Temperature.FromCelsius(20), RelativeHumidity.FromFraction(0.4), split.SurfaceDiameter);
        var solver = new SplitSolver([SplitGrid.For(split, resolution)], MobilityTable.Of(new(560, 3e-10)), [new LaneWood(560)], AirSeries.Steady(air), control);
        solver.Moisture.Fill(0.2);
        solver.SetCelsius(20);
        return solver;
    }

    private static double CosineError(SplitGrid grid) =>
        Math.Abs(Cosine(grid, new(1e-7, 1e-7, 10, 1e9, AllowNegative: true)) - Math.Pow(2 / Math.PI * Math.Exp(-Math.PI * Math.PI / 4 * 0.2), 3));

    /// <summary>Mean at Fo 0.2, from cell averages of the cosines.</summary>
    private static double Cosine(SplitGrid grid, StepControl control)
    {
        LaneGrid lanes = new(grid);
        var driver = new AdaptiveDriver(lanes, new LinearLaw(lanes, Diffusivity, 0, _ => double.PositiveInfinity), control);
        double[] Averages(double[] edges) => [.. edges.Zip(edges.Skip(1), (a, b) => (Math.Sin(Math.PI / 2 * b / Half) - Math.Sin(Math.PI / 2 * a / Half)) * Half * 2 / Math.PI / (b - a))];
        double[] x = Averages(grid.RadialEdges), y = Averages(grid.TangentialEdges), z = Averages(grid.LongitudinalEdges);
        for (var i = 0; i < x.Length; i++)
        for (var j = 0; j < y.Length; j++)
        for (var k = 0; k < z.Length; k++)
            driver.Stepper.State[grid.Index(i, j, k)] = x[i] * y[j] * z[k];
        var finish = 0.2 * Half * Half / Diffusivity;
        while (driver.Time < finish) driver.Advance(finish);
        return SplitProbes.Read(SplitProbes.Of(grid).Mean, driver.Stepper.State, 0, 1);
    }

    private static double[] Orders(double[] errors) => [.. errors.Zip(errors.Skip(1), (coarse, fine) => Math.Log2(coarse / fine))];
}
