using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Racks;

namespace Rickyard.Core.Learning.Unknowns;

/// <summary>
/// The unknowns a case leaves open, and how each splits into what a whole lot shares and what its pieces have of their own: a piece's standard normal number is
/// lot share × the lot's + piece share × its own, so that without readings the spread is that of the plain forecast (physics.md, L1 and L2).
/// </summary>
internal sealed class LotUnknowns
{
    private LotUnknowns(IReadOnlyList<Unknown> active, double[] lotShare)
    {
        Active = active;
        LotShare = lotShare;
        PieceShare = [.. lotShare.Select(share => Math.Sqrt(Math.Max(0, 1 - share * share)))];
        PieceOwn = [.. Enumerable.Range(0, active.Count).Where(k => PieceShare[k] > 0)];
    }

    /// <summary>Those that matter in the case.</summary>
    internal IReadOnlyList<Unknown> Active { get; }

    /// <summary>Weight of the lot's number. [–]</summary>
    internal double[] LotShare { get; }

    /// <summary>Weight of the piece's own number. [–]</summary>
    internal double[] PieceShare { get; }

    /// <summary>Places in <see cref="Active"/> at which pieces differ.</summary>
    internal IReadOnlyList<int> PieceOwn { get; }

    /// <summary>Number of unknowns.</summary>
    internal int Count => Active.Count;

    /// <summary>Of a case.</summary>
    internal static LotUnknowns Of(DryingCase drying)
    {
        var active = Enum.GetValues<Unknown>().Where(unknown => IsOpen(drying, unknown)).ToArray();
        var isLot = LearningCase.IsLot(drying);
        return new(active, [.. active.Select(unknown => isLot ? Math.Sqrt(1 - PieceVariance(drying, unknown)) : 1)]);
    }

    /// <summary>The member that numbers stand for.</summary>
    /// <param name="numbers">One for each active unknown.</param>
    internal MemberDraw Member(ReadOnlySpan<double> numbers) => new(
        At(numbers, Unknown.Start), At(numbers, Unknown.Rate), At(numbers, Unknown.FreeWater), At(numbers, Unknown.Bark), At(numbers, Unknown.Density),
        At(numbers, Unknown.Size), At(numbers, Unknown.Sorption));

    /// <summary>The rack that numbers stand for.</summary>
    /// <param name="numbers">One for each active unknown.</param>
    internal RackFactors Rack(ReadOnlySpan<double> numbers)
    {
        var spread = new RackUncertainty();
        return new(
            Math.Exp(spread.Wind * At(numbers, Unknown.Wind)), Math.Exp(spread.Rain * At(numbers, Unknown.Rain)), Math.Exp(spread.Sun * At(numbers, Unknown.Sun)));
    }

    /// <summary>Whether an unknown is one of the rack, the same for all its pieces.</summary>
    internal static bool IsOfRack(Unknown unknown) => unknown >= Unknown.Wind;

    private double At(ReadOnlySpan<double> numbers, Unknown unknown)
    {
        for (var k = 0; k < Active.Count; k++)
            if (Active[k] == unknown) return numbers[k];
        return 0;
    }

    private static bool IsOpen(DryingCase drying, Unknown unknown) => unknown switch
    {
        Unknown.Start => MemberWood.StartSpreadOf(drying) > 0,
        Unknown.Rate => drying.RateFactor is null,
        Unknown.Bark => drying.Split.Bark,
        Unknown.Density => !MemberWood.IsOwnDensity(drying),
        Unknown.Size => MemberWood.SizeSpreadOf(drying) > 0,
        Unknown.Wind => drying.Periods.Any(period => period is RackPeriod or SteadyPeriod),
        Unknown.Rain or Unknown.Sun => drying.Periods.Any(period => period is RackPeriod),
        _ => true,
    };

    /// <summary>
    /// Part of an unknown's variance that lies between the pieces of one lot. Start and size follow from the spreads of E1 and E6 (pieces of a lot 8 %, the typical
    /// width itself known to 5 %); the others are judgement: half of what is known to vary within a species varies within a stem (Zobel and van Buijtenen 1989, from
    /// memory, for density).
    /// </summary>
    private static double PieceVariance(DryingCase drying, Unknown unknown) => unknown switch
    {
        Unknown.Start => Part(MemberWood.StartSpreadOfLot, MemberWood.StartSpreadOf(drying)),
        Unknown.Rate or Unknown.FreeWater => 0.3,
        Unknown.Bark or Unknown.Density => 0.5,
        Unknown.Size => drying.SizeSpread > 0 ? 1 - Part(WidthKnownTo, drying.SizeSpread) / 2 : 0,
        Unknown.Sorption => 0.2,
        _ => 0,
    };

    private const double WidthKnownTo = 0.05;

    private static double Part(double part, double whole) => Math.Min(0.9, part * part / (whole * whole));
}
