using System.Runtime.Intrinsics;
using CsCheck;
using Rickyard.Core.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class MobilityTableTests
{
    private static readonly Gen<double> AnyMoisture = Gen.OneOf(Gen.Double[0, 0.4], Gen.Double[0, 3]);
    private static readonly Gen<WaterMobility> AnyWood = Gen.Select(
        Gen.Int[0, 4], Gen.Int[0, 3], (density, free) => new WaterMobility(350 + 120 * density, 1e-10 * Math.Pow(4, free)));

    [Fact]
    public void Four_at_a_time_look_up_what_one_does() => Gen.Select(AnyWood, Gen.Double[-50, 120], Gen.Select(AnyMoisture, AnyMoisture, AnyMoisture, AnyMoisture))
        .Sample((wood, celsius, moisture) =>
        {
            var row = Row(wood, celsius);
            var four = Vector256.Create(moisture.Item1, moisture.Item2, moisture.Item3, moisture.Item4);
            var potential = MobilityRow.At(row.Across, row.Along, row.Across, row.Along, four, out var diffusivity);
            for (var i = 0; i < 4; i++)
            {
                var one = MobilityRow.At(i % 2 == 0 ? row.Across : row.Along, four[i], out var plain);
                Assert.Equal(one, potential[i], 1e-12 * one);
                Assert.Equal(plain, diffusivity[i], 1e-12 * plain);
            }
        });

    // linear between nodes 1/256 apart (fine) or 1/32 (free water only) and kelvins 1 apart, where two bends of the formulas (wall to oak curve,
    // fibre saturation) may fall between nodes
    [Fact]
    public void Diffusivity_is_that_of_the_formulas_within_the_spacing_of_the_nodes() => Gen.Select(AnyWood, Gen.Double[-39, 109], Gen.Double[0.02, 1.2]).Sample((wood, celsius, moisture) =>
    {
        var row = Row(wood, celsius);
        MobilityRow.At(row.Across, moisture, out var across);
        MobilityRow.At(row.Along, moisture, out var along);
        double bound = wood.BoundAcross(moisture, celsius), free = wood.FreeAcross(moisture, celsius);
        var slack = 0.01 * (bound + free) + 0.2 * Math.Abs(wood.FreeAcross(moisture + 0.04, celsius) - wood.FreeAcross(moisture - 0.04, celsius))
            + Math.Abs(wood.FreeAcross(moisture, celsius + 1) - wood.FreeAcross(moisture, celsius - 1));
        Assert.Equal(bound + free, across, slack);
        Assert.Equal(wood.BoundAlong(moisture, celsius) + WaterMobility.FreeWaterAlongOverAcross * free, along, 10 * slack + 0.03 * along);
    });

    // Simpson's rule on the formulas, 2000 intervals
    [Fact]
    public void Potential_is_the_integral_of_the_formulas() => Gen.Select(AnyWood, Gen.Double[1, 100], Gen.Double[0.05, 1.5]).Sample(
        (wood, celsius, moisture) =>
        {
            double Diffusivity(double at) => wood.BoundAcross(at, celsius) + wood.FreeAcross(at, celsius);
            const int Intervals = 2000;
            var integral = Enumerable.Range(0, Intervals).Select(i => (i + 0.0) * moisture / Intervals)
                .Sum(at => moisture / Intervals / 6 * (Diffusivity(at) + 4 * Diffusivity(at + moisture / Intervals / 2) + Diffusivity(at + moisture / Intervals)));
            Assert.Equal(integral, MobilityRow.At(Row(wood, celsius).Across, moisture, out _), 0.01 * integral);
        },
        iter: 50);

    [Fact]
    public void Potential_rises_and_diffusivity_stays_above_zero() => Gen.Select(AnyWood, Gen.Double[-60, 130]).Sample((wood, celsius) =>
    {
        var row = Row(wood, celsius);
        foreach (var values in (double[][])[row.Across, row.Along])
        {
            double before = -1;
            for (var moisture = 0.0; moisture < 3.5; moisture += 0.01)
            {
                var potential = MobilityRow.At(values, moisture, out var diffusivity);
                Assert.True(potential > before && diffusivity > 0, $"{moisture}: {potential}, {diffusivity}");
                before = potential;
            }
        }
    });

    [Fact]
    public void Factors_multiply_their_own_part() => Gen.Select(AnyWood, Gen.Double[5, 90], Gen.Double[0.3, 3], Gen.Double[0.05, 1]).Sample((wood, celsius, factor, moisture) =>
    {
        MobilityRow plain = new(), bound = new(), free = new();
        var table = MobilityTable.Of(wood);
        table.Blend(celsius, 1, 1, plain);
        table.Blend(celsius, factor, 1, bound);
        table.Blend(celsius, 1, factor, free);
        MobilityRow.At(plain.Across, moisture, out var both);
        MobilityRow.At(bound.Across, moisture, out var moreBound);
        MobilityRow.At(free.Across, moisture, out var moreFree);
        Assert.Equal((1 + factor) * both, moreBound + moreFree, 1e-9 * both);
    });

    private static MobilityRow Row(WaterMobility wood, double celsius)
    {
        var row = new MobilityRow();
        MobilityTable.Of(wood).Blend(celsius, 1, 1, row);
        return row;
    }
}
