using CsCheck;
using Rickyard.Core.Measuring;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Rickyard.Testing.Measuring;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

public sealed class PinViewTests
{
    private static readonly Gen<Pins> AnyPins = Gen.Select(Gen.Enum<PinPlace>(), Gen.Double[0, 0.03], Gen.Bool, (place, depth, insulated) => new Pins(place, depth, insulated));

    private static readonly Gen<Split> BarePiece = AnyPiece.OfAnyShape.Where(split => !split.Bark);

    private static readonly SplitGrid Wedge = SplitGrid.For(Split.Wedge(Length.FromMetres(0.11), Angle.FromDegrees(60), Length.FromMetres(0.4), bark: false));

    [Fact]
    public void A_field_of_one_value_reads_so_at_every_place_of_every_shape() => Gen.Select(AnyPiece.OfAnyShape, AnyPins, Gen.Double[0.03, 1.2]).Sample(
        (split, pins, value) =>
        {
            var grid = SplitGrid.For(split);
            Assert.Equal(value, PinView.Of(grid, pins).Read([.. Enumerable.Repeat(value, grid.Count)]), 1e-9);
        },
        iter: 200);

    [Fact]
    public void A_moister_field_reads_higher() => Gen.Select(AnyPiece.OfAnyShape, AnyPins, Gen.Double[0.05, 0.5].Array[8]).Sample(
        (split, pins, values) =>
        {
            var grid = SplitGrid.For(split);
            double[] field = [.. Enumerable.Range(0, grid.Count).Select(cell => values[cell * 7 % values.Length])];
            double[] moister = [.. field.Select((value, cell) => value * (1 + 0.02 * (1 + cell % 3)))];
            var view = PinView.Of(grid, pins);
            double read = view.Read(field), after = view.Read(moister);
            Assert.True(after > read, $"{after} after {read}");
            Assert.InRange(read, values.Min() - 1e-12, values.Max() + 1e-12);
        },
        iter: 100);

    [Fact]
    public void Members_side_by_side_are_read_apart()
    {
        double[] field = [.. Enumerable.Range(0, 4 * Wedge.Count).Select(cell => 0.10 + 0.05 * (cell % 4))];
        var view = PinView.Of(Wedge, new(PinPlace.FreshCore));
        for (var lane = 0; lane < 4; lane++) Assert.Equal(0.10 + 0.05 * lane, view.Read(field, lane, 4), 1e-12);
    }

    // by hand: a bar of which moisture falls along the grain, 40 % at mid-length to 10 % at the end: 10 mm in from the end of 400 mm it is 11.5 %
    [Fact]
    public void An_insulated_tip_on_a_straight_slope_reads_the_moisture_there()
    {
        var grid = SplitGrid.Uniform(Split.Block(Length.FromMetres(0.1), Length.FromMetres(0.1), Length.FromMetres(0.4)), 10, 10, 400);
        var field = MadeField.AtMiddles(grid, (_, _, z) => 0.40 - 1.5 * z);
        Assert.Equal(0.10 + 1.5 * 0.010, PinView.Of(grid, new(PinPlace.EndGrain, 0.0125, Insulated: true)).Read(field), 0.0003);
    }

    // by hand: bare pins through layers from 10 to 20 %, conductance as M^7.83: the mean of M^7.83 is (0.2^8.83 - 0.1^8.83)/(8.83 × 0.1), whose 7.83rd root is 16.53 %
    [Fact]
    public void Bare_pins_on_a_straight_slope_read_nearer_the_wet_end()
    {
        var grid = SplitGrid.Uniform(Split.Block(Length.FromMetres(0.1), Length.FromMetres(0.1), Length.FromMetres(0.4)), 10, 10, 400);
        var field = MadeField.AtMiddles(grid, (_, _, z) => 0.10 + 10 * (0.2 - z));
        Assert.Equal(0.1653, PinView.Of(grid, new(PinPlace.EndGrain, 0.010)).Read(field), 0.0005);
    }

    // "after rain that is the skin": woodworkingnetwork.com, Moisture in Wood: Meter Usage (2013), uninsulated pins show the wettest layer they touch
    [Theory]
    [InlineData(PinPlace.SplitFace)]
    [InlineData(PinPlace.Side)]
    [InlineData(PinPlace.EndGrain)]
    public void A_wet_skin_shows_on_bare_pins_and_not_on_insulated_ones(PinPlace place)
    {
        var field = MadeField.ByDepth(Wedge, depth => depth < 0.0014 ? 0.28 : 0.16);
        Assert.InRange(PinView.Of(Wedge, new(place)).Read(field), 0.21, 0.28);
        Assert.InRange(PinView.Of(Wedge, new(place, 0.015, Insulated: true)).Read(field), 0.155, 0.165);
    }

    [Fact]
    public void Insulated_pins_in_a_slab_read_the_parabola_at_their_depth() =>
        Assert.All(Testing.ReferenceTable.Read("Measuring/slab_pin_depth.csv"), row =>
        {
            var depth = row.Number("pin_tip_depth_fraction_of_thickness");
            Assert.Equal(row.Number("reading_minus_surface_as_fraction_of_D"), InSlab(depth, 0, 1), 0.003);
            Assert.Equal(row.Number("reading_minus_mean_as_fraction_of_D"), InSlab(depth, 0, 1) - 2.0 / 3, 0.003);
        });

    // shell of 16 % and core half of 24 %: surface 9.33 %, centre 25.33 % (derived by integration of the parabola); the middle of the bare tip at these depths
    [Theory]
    [InlineData(0.25, 0.2133)]
    [InlineData(0.20, 0.1957)]
    [InlineData(0.30, 0.2277)]
    public void Insulated_pins_in_a_slab_meet_the_worked_examples(double depth, double expected) => Assert.Equal(expected, InSlab(depth, 0.0933, 0.16), 0.0002);

    [Fact]
    public void A_fifth_to_a_quarter_of_a_slab_is_where_its_mean_is()
    {
        Assert.True(InSlab(0.20, 0.10, 0.12) < 0.10 + 0.08);
        Assert.True(InSlab(0.25, 0.10, 0.12) > 0.10 + 0.08);
    }

    // pieces thinner than 5 cm are left out: pins from outside come near their middle
    [Fact]
    public void Core_of_a_drying_piece_reads_above_its_split_face_and_end() => BarePiece.Where(split => split.Thickness > 0.05).Sample(
        split =>
        {
            var grid = SplitGrid.For(split);
            var field = MadeField.ByDepth(grid, depth => 0.10 + 0.2 * (1 - Math.Exp(-depth / 0.015)));
            double At(PinPlace place) => PinView.Of(grid, new(place)).Read(field);
            var core = At(PinPlace.FreshCore);
            Assert.True(core > At(PinPlace.SplitFace) && core > At(PinPlace.Side) && core > At(PinPlace.EndGrain), split.Describe());
        },
        iter: 100);

    /// <summary>Eight months in a room from 60 %, all of it where a meter can read: solved and read on a grid twice as fine.</summary>
    [Theory]
    [InlineData(SplitShape.Wedge)]
    [InlineData(SplitShape.HalfRound)]
    [InlineData(SplitShape.Round)]
    [InlineData(SplitShape.InnerWedge)]
    [InlineData(SplitShape.Block)]
    public void A_finer_grid_reads_nearly_the_same(SplitShape shape)
    {
        SplitGrid grid = SplitGrid.For(DriedPiece.Of(shape)), fine = SplitGrid.For(DriedPiece.Of(shape), GridResolution.Default.Refined(2));
        double[] field = DriedPiece.InRoom(grid, 0.60, 240), fineField = DriedPiece.InRoom(fine, 0.60, 240);
        foreach (var pins in Enum.GetValues<PinPlace>().SelectMany(place => new Pins[] { new(place), new(place, 0.015, Insulated: true) }))
            Assert.Equal(PinView.Of(fine, pins).Read(fineField), PinView.Of(grid, pins).Read(field), 0.006);
    }

    [Fact]
    public void Reading_allocates_nothing()
    {
        var view = PinView.Of(Wedge, new(PinPlace.SplitFace));
        double[] field = [.. Enumerable.Repeat(0.2, Wedge.Count)];
        var sum = view.Read(field);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++) sum += view.Read(field);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(101 * 0.2, sum, 1e-9);
    }

    /// <summary>Reading of insulated pins in a slab so thick that their bare tip is a point in it, the middle of the bare tip at a depth given as a fraction of it.</summary>
    private static double InSlab(double depth, double surface, double rise)
    {
        const double Thickness = 4, Tip = 0.005;
        var grid = SplitGrid.Uniform(Split.Block(Length.FromMetres(8), Length.FromMetres(Thickness), Length.FromMetres(4)), 2, 2000, 2);
        var field = MadeField.AtMiddles(grid, (_, y, _) => surface + rise * (1 - Math.Pow(2 * y / Thickness, 2)));
        return PinView.Of(grid, new(PinPlace.SplitFace, depth * Thickness + Tip / 2, Insulated: true)).Read(field);
    }
}
