using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Testing.Boxes;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>What the usual steps and grid cost; points are of moisture content, dry basis.</summary>
public sealed class BoxConvergenceTests(ITestOutputHelper output)
{
    private const double Point = 0.01;
    private static readonly StepControl Tight = new(1e-4, 2e-4, 10, 1800);

    [Fact]
    public void Steps_ten_times_as_careful_move_means_and_cores_by_less_than_a_quarter_of_a_point() =>
        Near(Run(), Run(control: Tight), 0.25 * Point, 0.25 * Point);

    [Fact]
    public void Finer_grid_moves_means_by_less_than_half_a_point_and_cores_by_less_than_one() =>
        Near(Run(), Run(resolution: GridResolution.Default.Refined(2)), 0.5 * Point, Point);

    [Fact]
    public void Box_in_the_sun_is_followed_through_day_and_night()
    {
        var box = SampleBox.Cabinet with { Heater = new(0, 4, 0, HeaterFuel.Electricity, 1), Sun = new(2, 0.7, 5, 1.2), Vent = new(0, 0.002, null) };
        BoxTrace Sunny(StepControl? control) => SampleBox.Run(
            SampleBox.Plan(box, null), [SampleBox.Class(0.06, 40), SampleBox.Class(0.1, 10)], OutsideSeries.Of(DesMoinesYear.Weather), 20, 4, control: control);
        Near(Sunny(null), Sunny(Tight), 0.5 * Point, 0.5 * Point);
    }

    private static BoxTrace Run(GridResolution? resolution = null, StepControl? control = null) => SampleBox.Run(
        SampleBox.Plan(SampleBox.Cabinet, 65), [SampleBox.Class(0.05, 30), SampleBox.Class(0.08, 20), SampleBox.Class(0.12, 8, celsius: -10)], 14, 14, resolution, control);

    private void Near(BoxTrace usual, BoxTrace careful, double means, double cores)
    {
        output.WriteLine($"steps {usual.Steps}, {careful.Steps}");
        for (var i = 0; i < usual.Typical.Count; i++)
        {
            double mean = Worst(usual.Typical[i].Mean, careful.Typical[i].Mean), core = Worst(usual.Typical[i].Core, careful.Typical[i].Core);
            output.WriteLine($"class {i}: mean off by {mean:P2}, core by {core:P2}; ends at {usual.Typical[i].Mean[^1]:P2}");
            Assert.InRange(mean, 0, means);
            Assert.InRange(core, 0, cores);
        }
    }

    private static double Worst(double[] one, double[] other) => one.Zip(other).Max(pair => Math.Abs(pair.First - pair.Second));
}
