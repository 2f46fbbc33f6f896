using CsCheck;

using Rickyard.Core.Wood;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class WoodDensityTests
{
    [Fact]
    public void Maximum_moisture_meets_the_worked_values()
    {
        foreach (var row in ReferenceTable.Read("Wood/maximum_moisture.csv"))
            Assert.Equal(row.Number("mc_percent"), 100 * WoodDensity.MaximumMoisture(1000 * row.Number("basic_gravity")), 0.06);
    }

    // Wood Handbook eq. 4-9 worked elsewhere: white oak (0.60, 16.3 %) at 12 %; red oak (0.56) green at 80 %, to 1 kg/m³.
    [Theory]
    [InlineData(600, 0.163, 0.12, 745)]
    [InlineData(560, 0.137, 0.80, 1008)]
    public void Density_of_oak_meets_the_worked_values(double basic, double shrinkage, double moisture, double published) =>
        Assert.Equal(published, WoodDensity.At(basic, moisture, shrinkage), 0.6);

    // Wood Handbook Table 5-3 prints both specific gravities. The volume rule with each wood's own shrinkage reaches the 12 % value within
    // 0.03 in the median of all woods with both, and with the usual shrinkage too; single woods miss by more, as the handbook's own rows do.
    [Fact]
    public void Gravity_at_twelve_percent_follows_from_the_basic_one()
    {
        var misses = SpeciesCatalogue.All.Where(wood => wood.GravityAtTwelvePercent is not null && wood.VolumetricShrinkage is not null)
            .Select(wood => Math.Abs(WoodDensity.DryMassPerVolume(
                wood.BasicDensity.Value.KilogramsPerCubicMetre, 0.12, wood.VolumetricShrinkage!.Value) / 1000 - wood.GravityAtTwelvePercent!.Value))
            .Order().ToList();
        Assert.True(misses.Count > 50);
        Assert.InRange(misses[misses.Count / 2], 0, 0.03);
    }

    [Fact]
    public void Wood_shrinks_as_it_dries_and_not_above_thirty_percent() => Gen.Select(Gen.Double[0.05, 0.2], Gen.Double[0, 0.29]).Sample((total, moisture) =>
        WoodDensity.Shrinkage(total, moisture) > WoodDensity.Shrinkage(total, moisture + 0.01)
        && WoodDensity.Shrinkage(total, 0.30) < 1e-12 && WoodDensity.Shrinkage(total, 1) == 0 && WoodDensity.Shrinkage(total, 0) == total);

    [Fact]
    public void Full_wood_weighs_cell_wall_and_water_together() => Gen.Double[300, 900].Sample(basic =>
    {
        var water = basic * WoodDensity.MaximumMoisture(basic);
        return Math.Abs(basic / WoodDensity.OfCellWall + water / 1000 - 1) < 1e-12;
    });
}
