using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

/// <summary>
/// Crank's and Newman's solutions, at the default grid and the forecast's own step control: the wood starts 60 points above the balance, as green
/// wood does, so the control's 0.1 point means here what it means in a forecast.
/// </summary>
public sealed class AnalyticDiffusionTests
{
    private const double Start = 0.7, Balance = 0.1, Diffusivity = 2e-10, Allowed = 0.003;

    public static TheoryData<double> HalfThicknesses => [0.015, 0.025, 0.05, 0.075];

    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Slab_with_held_faces_follows_Crank(double half) =>
        Follows("slab", Slab(half), half, Diffusivity, OnlyAcrossWidth, double.PositiveInfinity);

    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Round_with_closed_ends_follows_Crank(double radius) =>
        Follows("long_cylinder", Round(radius, 0.4, false), radius, RadialDiffusivity, NotEnds, double.PositiveInfinity);

    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Round_on_the_grid_of_a_barked_one_follows_Crank(double radius) =>
        Follows("long_cylinder", Round(radius, 0.4, true), radius, RadialDiffusivity, NotEnds, double.PositiveInfinity);

    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Square_bar_follows_Newman(double half) =>
        Follows("square_bar", Block(half, half, 0.2), half, Diffusivity, NotEnds, double.PositiveInfinity);

    // all three pairs of faces open, in the proportions of a split; Fo counts on the smaller half thickness
    [Theory]
    [InlineData(0.05, 0.04, 0.2)]
    [InlineData(0.06, 0.03, 0.15)]
    [InlineData(0.075, 0.05, 0.2)]
    public void Prism_follows_Newman(double width, double height, double length)
    {
        var small = Math.Min(width, height);
        double Left(double fo, double half) => SlabFraction(fo * small * small / (half * half));
        (double, double)[] expected = [.. Fouriers.Select(fo => (fo, Left(fo, width) * Left(fo, height) * Left(fo, length)))];
        Follows(expected, Block(width, height, length), small, Diffusivity, _ => true, double.PositiveInfinity);
    }

    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Cube_follows_Newman(double half) => Follows("cube", Block(half, half, half), half, Diffusivity, _ => true, double.PositiveInfinity);

    [Fact]
    public void Series_of_this_test_is_the_tabled_one()
    {
        foreach (var row in ReferenceTable.Read("Drying/diffusion_infinite_biot.csv"))
        {
            Assert.Equal(row.Number("slab"), SlabFraction(row.Number("fo")), 1e-6);
            Assert.Equal(row.Number("cube"), Math.Pow(SlabFraction(row.Number("fo")), 3), 1.5e-6);
        }
    }

    // the grain of a log conducts 1.1 / 1.2 as well along as radially here, so the half length that has the radius's Fourier number is shorter
    [Theory]
    [MemberData(nameof(HalfThicknesses))]
    public void Short_cylinder_follows_Newman(double radius) => Follows(
        "cylinder_length_equals_diameter", Round(radius, 2 * radius / Math.Sqrt(LaneGrid.RadialOverMean), false), radius, RadialDiffusivity, _ => true, double.PositiveInfinity);

    [Theory]
    [InlineData(0.025)]
    [InlineData(0.075)]
    public void Slab_of_finite_Biot_number_follows_Crank(double half)
    {
        foreach (var biot in ReferenceTable.Read("Drying/diffusion_finite_biot.csv").GroupBy(row => row.Number("biot")))
            Follows([.. biot.Select(row => (row.Number("fo"), row.Number("slab")))], Slab(half), half, Diffusivity, OnlyAcrossWidth, biot.Key);
    }

    [Theory]
    [InlineData(0.025)]
    [InlineData(0.075)]
    public void Round_of_finite_Biot_number_follows_Crank(double radius)
    {
        foreach (var biot in ReferenceTable.Read("Drying/diffusion_finite_biot.csv").GroupBy(row => row.Number("biot")))
            Follows([.. biot.Select(row => (row.Number("fo"), row.Number("long_cylinder")))], Round(radius, 0.4, false), radius, RadialDiffusivity, NotEnds, biot.Key);
    }

    [Theory]
    [InlineData(0.025)]
    [InlineData(0.075)]
    public void Square_bar_of_finite_Biot_number_follows_Newman(double half)
    {
        foreach (var biot in ReferenceTable.Read("Drying/diffusion_finite_biot.csv").GroupBy(row => row.Number("biot")))
            Follows([.. biot.Select(row => (row.Number("fo"), Math.Pow(row.Number("slab"), 2)))], Block(half, half, 0.2), half, Diffusivity, NotEnds, biot.Key);
    }

    // Crank's tabled roots, four decimals, give the same series: first six terms, enough from Fo 0.2 on; four decimals of 0.0998 are 0.002 of its fourth power
    [Fact]
    public void Tabled_roots_give_the_tabled_fractions()
    {
        var roots = ReferenceTable.Read("Drying/diffusion_biot_roots.csv").ToDictionary(row => row.Number("biot"));
        foreach (var row in ReferenceTable.Read("Drying/diffusion_finite_biot.csv").Where(row => row.Number("fo") is >= 0.2 and <= 1 && roots.ContainsKey(row.Number("biot"))))
        {
            var biot = row.Number("biot");
            double Sum(string shape, double factor, double extra) => Enumerable.Range(1, 6).Select(n => roots[biot].Number($"{shape}_{n}"))
                .Sum(root => factor * biot * biot * Math.Exp(-root * root * row.Number("fo")) / (root * root * (root * root + biot * biot + extra)));
            Assert.Equal(row.Number("slab"), Sum("slab", 2, biot), 2e-3);
            Assert.Equal(row.Number("long_cylinder"), Sum("cylinder", 4, 0), 2e-3);
        }
    }

    private static double RadialDiffusivity => Diffusivity * LaneGrid.RadialOverMean;

    private static double[] Fouriers => [.. ReferenceTable.Read("Drying/diffusion_infinite_biot.csv").Select(row => row.Number("fo"))];

    /// <summary>Crank 1975, eq. 4.18: mean fraction left in a slab with held faces.</summary>
    private static double SlabFraction(double fo) => Enumerable.Range(0, 200).Select(n => (2 * n + 1) * Math.PI / 2)
        .Sum(root => 2 / (root * root) * Math.Exp(-root * root * fo));

    private static Split Slab(double half) => Block(half, 0.1, 0.2);

    private static Split Block(double halfWidth, double halfHeight, double halfLength) =>
        Split.Block(Length.FromMetres(2 * halfWidth), Length.FromMetres(2 * halfHeight), Length.FromMetres(2 * halfLength));

    private static Split Round(double radius, double length, bool bark) => Split.Round(Length.FromMetres(2 * radius), Length.FromMetres(length), bark);

    private static bool OnlyAcrossWidth(OuterFace face) => face.Normal == Axis.Radial;

    private static bool NotEnds(OuterFace face) => face.Kind != FaceKind.End;

    private static void Follows(string column, Split split, double half, double diffusivity, Func<OuterFace, bool> open, double biot) => Follows(
        [.. ReferenceTable.Read("Drying/diffusion_infinite_biot.csv").Select(row => (row.Number("fo"), row.Number(column)))], split, half, diffusivity, open, biot);

    private static void Follows(
        (double Fo, double Left)[] expected, Split split, double half, double diffusivity, Func<OuterFace, bool> open, double biot)
    {
        var grid = new LaneGrid(SplitGrid.For(split));
        var law = new LinearLaw(grid, Diffusivity, Balance, face => open(face) ? biot * diffusivity / half : 0);
        var driver = new AdaptiveDriver(grid, law, StepControl.Forecast);
        var mean = SplitProbes.Of(grid.Layout).Mean;
        driver.Stepper.State.AsSpan().Fill(Start);
        foreach (var (fo, left) in expected)
        {
            while (driver.Time < fo * half * half / diffusivity) driver.Advance(fo * half * half / diffusivity);
            var found = (SplitProbes.Read(mean, driver.Stepper.State, 0, 1) - Balance) / (Start - Balance);
            Assert.True(Math.Abs(found - left) <= Allowed, $"Biot {biot}, Fo {fo}: {found:0.0000}, exact {left:0.0000}.");
        }
    }
}
