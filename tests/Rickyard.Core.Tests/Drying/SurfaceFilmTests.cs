using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class SurfaceFilmTests
{
    private const double AirPressure = 101325;

    private static readonly Gen<StepAir> AnyAir = Gen.Select(
        Gen.Double[-20, 95], Gen.Double[0.02, 1], Gen.Double[2, 40], (celsius, humidity, convection) => new StepAir(
            celsius + 273.15, humidity * Math.Min(SaturationPressure.OverWater(celsius + 273.15), 0.95 * AirPressure), 1, 1, convection, 0, 0, 0, double.PositiveInfinity));

    private static readonly Gen<LaneWood> AnyWood = Gen.Select(
        Gen.Double[350, 850], Gen.Double[0.4, 2.5], Gen.Double[0.3, 3], Gen.Double[1e-10, 1e-8], Gen.Double[0.9, 1.11],
        (density, bound, free, bark, sorption) => new LaneWood(density, bound, free, bark, sorption));

    // Newton stops within 1e-4 of humidity, squared by its last step; on the flux that is 1e-5 of what dry air would take from a wet face
    [Fact]
    public void Faces_four_at_a_time_agree_with_bisection_of_one() => Gen.Select(AnyPiece.OfAnyShape, AnyWood, AnyAir, Gen.Double[-15, 90], Gen.Bool, Gen.Int[0, int.MaxValue])
        .Sample((split, wood, air, celsius, four, seed) =>
        {
            var grid = SplitGrid.For(split, new(4, 3, 3, 0.002, 1.8));
            LaneGrid lanes = four ? new(grid, grid, grid, grid) : new(grid);
            LaneBody[] bodies = [.. Enumerable.Range(0, lanes.Lanes).Select(_ => new LaneBody(grid, wood, MobilityTable.Of(new(560, 1e-9)), AirPressure))];
            var random = new Random(seed);
            double[] state = [.. Enumerable.Range(0, lanes.Count).Select(_ => 0.02 + random.NextDouble())];
            foreach (var body in bodies)
            {
                body.SetCelsius(celsius);
                body.Begin(air, state, lanes);
            }

            double[] flux = new double[lanes.OuterCells.Length], slope = new double[flux.Length];
            new SurfaceFilm(lanes, bodies).Exchange(state, flux, slope);
            for (var k = 0; k < flux.Length; k++)
            {
                var body = bodies[k % bodies.Length];
                var face = lanes.Layout.OuterFaces[k / bodies.Length];
                Assert.Equal(lanes.OuterAreas[k] * Plain(face, body, 1 / lanes.OuterInverseDepths[k]).Taken(state[lanes.OuterCells[k]]), flux[k],
                    1e-5 * lanes.OuterAreas[k] * body.FilmConductance * body.Saturation / wood.BasicDensity);
            }
        });

    // where the face neither gets wet nor dry within the nudge; a wet face has another slope on purpose
    [Fact]
    public void Slope_is_the_derivative_of_the_flux_of_a_dry_face() => Gen.Select(AnyWood, AnyAir, Gen.Double[0.03, 0.9]).Sample((wood, air, moisture) =>
    {
        const double Nudge = 1e-5;
        var grid = SplitGrid.Uniform(AnyBlock, 1, 1, 1);
        double[] states = [moisture - Nudge, moisture, moisture + Nudge], fluxes = new double[3], slopes = new double[3];
        for (var i = 0; i < 3; i++) (fluxes[i], slopes[i]) = Exchange(grid, wood, air, states[i]);
        var difference = (fluxes[2] - fluxes[0]) / (2 * Nudge);
        var bends = difference == 0 || Math.Abs(slopes[2] - slopes[0]) > 0.05 * slopes[1];
        if (bends) return;
        Assert.Equal(difference, slopes[1], 0.03 * Math.Abs(slopes[1]) + 1e-3 * Math.Abs(slopes[2] - slopes[0]) + 2e-4 * wood.BasicDensity * 1e-12 / Nudge);
    });

    [Fact]
    public void Soaked_wood_takes_in_no_dew()
    {
        var cold = new StepAir(283.15, 0.99 * SaturationPressure.OverWater(283.15), 1, 1, 10, 0, 0, 0, double.PositiveInfinity);
        var grid = SplitGrid.Uniform(AnyBlock, 1, 1, 1);
        Assert.True(Exchange(grid, new(560), cold, 0.25, woodCelsius: 5).Flux < 0);
        Assert.Equal(0, Exchange(grid, new(560), cold, 0.6, woodCelsius: 5).Flux, 1e-25);
        Assert.Equal(Exchange(grid, new(560), cold, 0.25, woodCelsius: 5).Flux / 2, Exchange(grid, new(560), cold, 0.6 - (0.6 - SorptionIsotherm.At(5).Saturation) / 2, woodCelsius: 5).Flux, 1e-20);
    }

    // bodies of one wood at one temperature share one isotherm
    [Fact]
    public void Isotherm_in_vectors_is_the_isotherm() => Gen.Select(AnyWood, Gen.Double[-30, 105], Gen.Double[0, 1]).Sample((wood, celsius, humidity) =>
    {
        var grid = SplitGrid.Uniform(AnyBlock, 1, 1, 1);
        var body = new LaneBody(grid, wood, MobilityTable.Of(new(560, 1e-9)), AirPressure);
        body.SetCelsius(celsius);
        body.Begin(new(celsius + 273.15, 500, 1, 1, 5, 0, 0, 0, double.PositiveInfinity), [0.3], new(grid));
        var moisture = new LaneAir([body]).Moisture(System.Runtime.Intrinsics.Vector256.Create(humidity), out var slope);
        var plain = SorptionIsotherm.At(celsius);
        Assert.Equal(wood.Sorption * plain.Moisture(humidity), moisture[0], 1e-12);
        Assert.Equal(wood.Sorption * plain.Slope(humidity), slope[0], 1e-9 * slope[0]);
    });

    private static Split AnyBlock { get; } = Split.Block(Length.FromMillimetres(40), Length.FromMillimetres(40), Length.FromMillimetres(100));

    private static PlainFace Plain(in OuterFace face, LaneBody body, double depth)
    {
        var row = face.Kind == FaceKind.End ? body.Row.Along : body.Row.Across;
        var resistance = 1 / body.FilmConductance + (face.Kind == FaceKind.Bark ? 1 / body.Wood.BarkConductance : 0);
        return new(
            moisture => MobilityRow.At(row, moisture, out _), body.Isotherm, 1 / (resistance * body.Wood.BasicDensity), body.Saturation, body.VaporPressure, depth);
    }

    private static (double Flux, double Slope) Exchange(SplitGrid grid, LaneWood wood, in StepAir air, double moisture, double? woodCelsius = null)
    {
        LaneGrid lanes = new(grid);
        var body = new LaneBody(grid, wood, MobilityTable.Of(new(560, 1e-9)), AirPressure);
        body.SetCelsius(woodCelsius ?? air.Kelvins - 273.15);
        body.Begin(air, [moisture], lanes);
        double[] flux = new double[3], slope = new double[3];
        new SurfaceFilm(lanes, [body]).Exchange([moisture], flux, slope);
        return (flux[0], slope[0]);
    }
}
