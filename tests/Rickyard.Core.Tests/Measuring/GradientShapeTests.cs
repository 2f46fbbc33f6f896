using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing;
using Rickyard.Testing.Measuring;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

/// <summary>The published rule of the parabola beside what the solver finds late in the drying of long pieces, at mid-length, 20 °C and 60 % relative humidity.</summary>
public sealed class GradientShapeTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, Split> Shapes = new()
    {
        ["slab"] = Split.Block(Length.FromMetres(1), Length.FromMetres(0.06), Length.FromMetres(2)),
        ["cylinder"] = Split.Round(Length.FromMetres(0.10), Length.FromMetres(2), bark: false),
        ["square bar"] = Split.Block(Length.FromMetres(0.08), Length.FromMetres(0.08), Length.FromMetres(2)),
    };

    /// <summary>Real profiles lie between the parabola (steady loss) and the cosine of constant diffusivity (2/π = 0.64 in a slab): 0.06 of D, 0.3 points of a drop of 5.</summary>
    [Fact]
    public void Late_profiles_are_near_the_parabola_of_their_shape() => Assert.All(ReferenceTable.Read("Measuring/gradient_profiles.csv"), row =>
    {
        var share = MeanShare(SplitGrid.For(Shapes[row.Text("shape")], GridResolution.Default.Refined(2)));
        output.WriteLine($"{row.Text("shape")}: mean {share:0.000} of D above the surface, rule {row.Text("mean_minus_surface_as_fraction_of_D")}");
        Assert.Equal(row.Number("mean_minus_surface_as_fraction_of_D"), share, 0.06);
        Assert.Equal(row.Number("core_minus_mean_as_fraction_of_D"), 1 - share, 0.06);
    });

    /// <summary>(mean − surface)/(centre − surface) at mid-length, on a day when the centre is some points above the air's balance.</summary>
    private static double MeanShare(SplitGrid grid)
    {
        var field = DriedPiece.InRoom(grid, 0.30, 150);
        double volume = 0, water = 0;
        for (var i = 0; i < grid.CountAlong(Axis.Radial); i++)
        for (var j = 0; j < grid.CountAlong(Axis.Tangential); j++)
        {
            volume += grid.Volumes[grid.Index(i, j, 0)];
            water += grid.Volumes[grid.Index(i, j, 0)] * field[grid.Index(i, j, 0)];
        }

        double centre = field[grid.Index(0, 0, 0)], surface = grid.Split.IsPolar ? field[grid.Index(grid.CountAlong(Axis.Radial) - 1, 0, 0)] : field[grid.Index(0, grid.CountAlong(Axis.Tangential) - 1, 0)];
        Assert.True(centre - surface > 0.02, $"centre {centre:P1}, surface {surface:P1}");
        return (water / volume - surface) / (centre - surface);
    }
}
