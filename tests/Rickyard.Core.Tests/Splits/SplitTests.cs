using CsCheck;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Splits;

public sealed class SplitTests
{
    private static Length Metres(double value) => Length.FromMetres(value);

    [Fact]
    public void Wedge_has_the_measures_of_a_sector()
    {
        var split = Split.Wedge(Metres(0.12), Angle.FromDegrees(60), Metres(0.4));
        Assert.Equal(Math.PI * 0.12 * 0.12 * 0.4 / 6, split.Volume, 1e-12);
        Assert.Equal(2 * Math.PI * 0.12 * 0.4 / 6, split.BarkArea, 1e-12);
        Assert.Equal(2 * 0.12 * 0.4, split.SideArea, 1e-12);
        Assert.Equal(2 * Math.PI * 0.12 * 0.12 / 6, split.EndArea, 1e-12);
        Assert.Equal(0.12, split.Thickness, 1e-12);
    }

    [Fact]
    public void Half_round_has_the_measures_of_half_a_cylinder()
    {
        var split = Split.HalfRound(Metres(0.2), Metres(0.4));
        Assert.Equal(Math.PI * 0.01 * 0.4 / 2, split.Volume, 1e-12);
        Assert.Equal(Math.PI * 0.1 * 0.4, split.BarkArea, 1e-12);
        Assert.Equal(0.2 * 0.4, split.SideArea, 1e-12);
    }

    [Fact]
    public void Round_has_no_bare_side_under_bark_and_nothing_else_without()
    {
        var barked = Split.Round(Metres(0.2), Metres(0.4));
        var peeled = Split.Round(Metres(0.2), Metres(0.4), bark: false);
        Assert.Equal(0, barked.SideArea, 1e-12);
        Assert.Equal(Math.PI * 0.2 * 0.4, barked.BarkArea, 1e-12);
        Assert.Equal(barked.BarkArea, peeled.SideArea, 1e-12);
        Assert.Equal(0.2, peeled.SurfaceDiameter, 1e-12);
    }

    [Fact]
    public void Inner_wedge_has_the_measures_of_a_ring_sector()
    {
        var split = Split.InnerWedge(Metres(0.05), Metres(0.15), Angle.FromDegrees(90), Metres(0.4));
        Assert.Equal(Math.PI / 4 * (0.15 * 0.15 - 0.05 * 0.05) * 0.4, split.Volume, 1e-12);
        Assert.Equal((Math.PI / 2 * 0.05 + 2 * 0.1) * 0.4, split.SideArea, 1e-12);
    }

    [Fact]
    public void Block_has_the_measures_of_a_block()
    {
        var split = Split.Block(Metres(0.1), Metres(0.08), Metres(0.4));
        Assert.Equal(0.1 * 0.08 * 0.4, split.Volume, 1e-12);
        Assert.Equal(2 * 0.18 * 0.4, split.SideArea, 1e-12);
        Assert.Equal(0.08, split.Thickness, 1e-12);
    }

    [Fact]
    public void Grid_adds_up_to_the_closed_forms() => AnyPiece.OfAnyShape.Sample(split =>
    {
        var grid = SplitGrid.For(split);
        double Area(FaceKind kind) => grid.Copies * grid.OuterFaces.Where(face => face.Kind == kind).Sum(face => face.Area);
        Assert.Equal(split.Volume, grid.Copies * grid.Volumes.Sum(), 1e-12 * split.Volume);
        Assert.Equal(split.BarkArea, Area(FaceKind.Bark), 1e-9 * split.Area);
        Assert.Equal(split.SideArea, Area(FaceKind.Side), 1e-9 * split.Area);
        Assert.Equal(split.EndArea, Area(FaceKind.End), 1e-9 * split.Area);
    });

    [Fact]
    public void Size_guessed_from_a_mass_has_that_mass_and_says_so() => Gen.Select(
        Gen.Int[0, 3].Select(i => new[] { SplitShape.Wedge, SplitShape.HalfRound, SplitShape.Round, SplitShape.Block }[i]), Gen.Double[0.2, 0.6], Gen.Double[0.5, 20], Gen.Double[500, 1200])
        .Sample((shape, length, mass, density) =>
        {
            var split = Split.FromMass(shape, Metres(length), Mass.FromKilograms(mass), Density.FromKilogramsPerCubicMetre(density));
            Assert.Equal(mass, split.Volume * density, 1e-9 * mass);
            Assert.Contains("guess", split.Guess, StringComparison.Ordinal);
            Assert.Equal(length, split.Length);
        });

    [Fact]
    public void Inner_wedge_cannot_be_guessed_from_a_mass() => Assert.Throws<ArgumentOutOfRangeException>(
        () => Split.FromMass(SplitShape.InnerWedge, Metres(0.4), Mass.FromKilograms(3), Density.FromKilogramsPerCubicMetre(900)));

    [Fact]
    public void Scaling_across_leaves_length_and_opening() => Gen.Select(AnyPiece.OfAnyShape, Gen.Double[0.5, 2]).Sample((split, factor) =>
    {
        var scaled = split.ScaledAcross(factor);
        Assert.Equal(split.Length, scaled.Length);
        Assert.Equal(factor * factor * split.CrossSection, scaled.CrossSection, 1e-12);
        if (split.IsPolar) Assert.Equal(split.Angle, scaled.Angle);
    });

    [Fact]
    public void Impossible_sizes_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Split.Wedge(Metres(0), Angle.FromDegrees(60), Metres(0.4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Split.Wedge(Metres(0.1), Angle.FromDegrees(200), Metres(0.4)));
        Assert.Throws<ArgumentException>(() => Split.InnerWedge(Metres(0.1), Metres(0.1), Angle.FromDegrees(60), Metres(0.4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Split.Block(Metres(0.1), Metres(0.1), Metres(0.4)).ScaledAcross(0));
    }
}
