using CsCheck;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Xunit;

namespace Rickyard.Core.Tests.Planning;

public sealed class SplitWidthTests
{
    private static readonly Length Sixteen = Length.FromInches(16);

    public static TheoryData<string, double> Widths => new()
    {
        { "wedge of 45°", 0.12 }, { "wedge of 60°", 0.12 }, { "wedge of 90°", 0.12 * Math.Sqrt(2) }, { "half round", 0.24 }, { "round", 0.24 }, { "block", 0.12 },
        { "thin inner wedge", 0.12 }, { "thick inner wedge", Math.Sqrt(0.03 * 0.03 + 0.12 * 0.12 - 2 * 0.03 * 0.12 * Math.Cos(Math.PI / 9)) },
    };

    [Theory]
    [MemberData(nameof(Widths))]
    public void Width_is_the_widest_way_across_the_end_grain(string piece, double width) => Assert.Equal(width, SplitWidth.Across(Piece(piece)), 1e-12);

    [Fact]
    public void Resized_piece_has_the_width_asked_for_and_keeps_shape_length_and_opening() => Gen.Select(Gen.OneOf([.. Widths.Select(row => Gen.Const(row.Data.Item1))]), Gen.Double[0.03, 0.3]).Sample((piece, width) =>
    {
        var (before, after) = (Piece(piece), SplitWidth.Resized(Piece(piece), width));
        var factor = width / SplitWidth.Across(before);
        return Math.Abs(SplitWidth.Across(after) - width) < 1e-12 && after.Shape == before.Shape && after.Length == before.Length && after.Bark == before.Bark
            && Math.Abs(after.CrossSection - before.CrossSection * factor * factor) < 1e-12;
    });

    [Fact]
    public void Resized_piece_is_no_guess_any_more()
    {
        var guessed = Split.FromMass(SplitShape.Wedge, Sixteen, Mass.FromKilograms(4), Density.FromKilogramsPerCubicMetre(1000));
        Assert.NotNull(guessed.Guess);
        Assert.Null(SplitWidth.Resized(guessed, 0.1).Guess);
    }

    private static Split Piece(string name)
    {
        static Length Metres(double value) => Length.FromMetres(value);
        static Angle Degrees(double value) => Angle.FromDegrees(value);
        return name switch
        {
            "wedge of 45°" => Split.Wedge(Metres(0.12), Degrees(45), Sixteen),
            "wedge of 60°" => Split.Wedge(Metres(0.12), Degrees(60), Sixteen),
            "wedge of 90°" => Split.Wedge(Metres(0.12), Degrees(90), Sixteen),
            "half round" => Split.HalfRound(Metres(0.24), Sixteen),
            "round" => Split.Round(Metres(0.24), Sixteen),
            "block" => Split.Block(Metres(0.05), Metres(0.12), Sixteen),
            "thin inner wedge" => Split.InnerWedge(Metres(0.08), Metres(0.12), Degrees(60), Sixteen),
            _ => Split.InnerWedge(Metres(0.03), Metres(0.12), Degrees(20), Sixteen),
        };
    }
}
