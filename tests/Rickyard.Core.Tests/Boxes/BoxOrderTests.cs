using Rickyard.Core.Boxes;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>What makes a box better must not make it worse.</summary>
public sealed class BoxOrderTests(ITestOutputHelper output)
{
    private const double Days = 4;

    [Fact]
    public void Larger_vent_never_raises_the_humidity() => Ordered(
        [0.0, 0.001, 0.002, 0.004, 0.008, 0.016], opening => Wet(SampleBox.Cabinet with { Vent = new(0, opening, null) }).Series.AirHumidity[^1], falling: true);

    [Fact]
    public void More_power_is_never_slower() => Ordered(
        [50.0, 100, 200, 400, 800, 1600], power => Wet(SampleBox.Cabinet with { Heater = SampleBox.Cabinet.Heater with { Power = power } }).Typical[0].Mean[^1], falling: true);

    // In warm walls: between cold ones more pieces hide them from each other, and a lone piece stays colder and dries slower.
    [Fact]
    public void More_pieces_are_never_dry_sooner() => Ordered(
        [1.0, 10, 30, 60, 100], pieces => SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet with { WallConductance = 0.1, Vent = new(0, 0.001, null) }, 60), [SampleBox.Class(0.06, (int)pieces)], Days).Typical[0].Mean[^1], falling: false);

    [Fact]
    public void Closer_packing_is_never_faster() => Ordered(
        [1.0, 0.8, 0.6, 0.4, 0.2], exposed => SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 60), [SampleBox.Class(0.06, 30) with { ExposedShare = exposed }], Days).Typical[0].Mean[^1],
        falling: false);

    [Fact]
    public void Higher_setting_is_never_slower() => Ordered(
        [25.0, 40, 55, 70, 85], celsius => SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, celsius), [SampleBox.Class(0.06, 30)], Days).Typical[0].Mean[^1], falling: true);

    [Fact]
    public void Warm_shelf_dries_no_slower_than_middle_and_cool_ones()
    {
        ChargeClass[] charge = [.. Enum.GetValues<ShelfPlace>().Select(shelf => SampleBox.Class(0.06, 20, shelf: shelf))];
        var trace = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 60), charge, Days);
        double[] means = [.. trace.Typical.Select(series => series.Mean[^1])];
        output.WriteLine(string.Join(" ", means.Select(mean => mean.ToString("P2"))));
        Assert.True(means[0] < means[1] && means[1] < means[2]);
    }

    private static BoxTrace Wet(BoxDescription box) => SampleBox.Run(SampleBox.Plan(box, 60), [SampleBox.Class(0.06, 60)], Days);

    private void Ordered(double[] inputs, Func<double, double> result, bool falling)
    {
        double[] results = [.. inputs.Select(result)];
        output.WriteLine(string.Join(" ", inputs.Zip(results).Select(pair => $"{pair.First}: {pair.Second:P2}")));
        for (var i = 1; i < results.Length; i++) Assert.True(falling ? results[i] <= results[i - 1] + 1e-4 : results[i] >= results[i - 1] - 1e-4, $"{inputs[i]} is out of order");
        Assert.True(Math.Abs(results[^1] - results[0]) > 0.005, "It made no difference at all.");
    }
}
