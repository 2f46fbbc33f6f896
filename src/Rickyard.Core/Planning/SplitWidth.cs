using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Planning;

/// <summary>
/// The width a person lays a ruler to: the widest way across the end grain, from one edge of the piece to another. Of a wedge of up to 60° that is its side from
/// pith to bark, of a wider one the distance between its two bark edges; of a round or half round the diameter; of a block its larger side, as boards are measured.
/// </summary>
public static class SplitWidth
{
    /// <summary>Width of a piece. [m]</summary>
    public static double Across(Split split) => split.Shape switch
    {
        SplitShape.Block => Math.Max(split.Outer, split.Angle),
        SplitShape.Round => 2 * split.Outer,
        _ => Math.Max(Math.Max(split.Outer - split.Inner, Chord(split.Outer, split.Outer, split.Angle)), Chord(split.Inner, split.Outer, split.Angle)),
    };

    /// <summary>The same shape, opening and length with another width; its size is then no guess any more.</summary>
    /// <param name="split">The piece.</param>
    /// <param name="width">Wanted, above zero. [m]</param>
    public static Split Resized(Split split, double width)
    {
        static Length Metres(double value) => Length.FromMetres(value);
        var scaled = split.ScaledAcross(width / Across(split));
        var (length, angle) = (Metres(scaled.Length), Angle.FromRadians(scaled.Angle));
        return scaled.Shape switch
        {
            SplitShape.Block => Split.Block(Metres(scaled.Outer), Metres(scaled.Angle), length),
            SplitShape.Round => Split.Round(Metres(2 * scaled.Outer), length, scaled.Bark),
            SplitShape.HalfRound => Split.HalfRound(Metres(2 * scaled.Outer), length, scaled.Bark),
            SplitShape.InnerWedge => Split.InnerWedge(Metres(scaled.Inner), Metres(scaled.Outer), angle, length, scaled.Bark),
            _ => Split.Wedge(Metres(scaled.Outer), angle, length, scaled.Bark),
        };
    }

    /// <summary>Distance between points at two radii that stand an angle apart. [m]</summary>
    private static double Chord(double one, double other, double angle) => Math.Sqrt(one * one + other * other - 2 * one * other * Math.Cos(angle));
}
