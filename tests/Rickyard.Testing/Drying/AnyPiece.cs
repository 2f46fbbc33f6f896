using CsCheck;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Testing.Drying;

/// <summary>Random pieces of the sizes people split, of every shape.</summary>
public static class AnyPiece
{
    private static readonly Gen<Length> Radius = Gen.Double[0.03, 0.16].Select(Length.FromMetres);
    private static readonly Gen<Length> Long = Gen.Double[0.15, 0.6].Select(Length.FromMetres);
    private static readonly Gen<Angle> Opening = Gen.Double[20, 180].Select(Angle.FromDegrees);

    /// <summary>Wedges.</summary>
    public static Gen<Split> Wedge { get; } = Gen.Select(Radius, Opening, Long, Gen.Bool, Split.Wedge);

    /// <summary>Rounds.</summary>
    public static Gen<Split> Round { get; } = Gen.Select(Radius, Long, Gen.Bool, Split.Round);

    /// <summary>Half rounds.</summary>
    public static Gen<Split> HalfRound { get; } = Gen.Select(Radius, Long, Gen.Bool, (radius, length, bark) => Split.HalfRound(Length.FromMetres(2 * radius.Metres), length, bark));

    /// <summary>Wedges with the heart split off.</summary>
    public static Gen<Split> InnerWedge { get; } = Gen.Select(
        Gen.Double[0.2, 0.8], Radius, Opening, Long, Gen.Bool,
        (part, radius, opening, length, bark) => Split.InnerWedge(Length.FromMetres(part * radius.Metres), radius, opening, length, bark));

    /// <summary>Blocks.</summary>
    public static Gen<Split> Block { get; } = Gen.Select(Radius, Radius, Long, Split.Block);

    /// <summary>Any of them.</summary>
    public static Gen<Split> OfAnyShape { get; } = Gen.OneOf(Wedge, Round, HalfRound, InnerWedge, Block);
}
