using Rickyard.Core.Measuring.Observed;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>
/// The oven-dry mass of a marked split beside its weighings: each weighs at least that, and at most that with every pore full. Where most of the weighings do not fit, the oven-dry mass is left out,
/// else the weighings that do not.
/// </summary>
internal static class DryMassHistory
{
    private const double Deviations = 3;

    public static IEnumerable<CrossFault> Find(IReadOnlyList<TakenReading> taken) => taken
        .Where(reading => reading.Observation is DryMassObservation)
        .SelectMany(dry => Beside(dry, [.. taken.Where(reading => reading.Observation is MassObservation && IsSamePiece(reading, dry))]))
        .DistinctBy(fault => fault.Reading);

    private static IEnumerable<CrossFault> Beside(TakenReading dry, IReadOnlyList<TakenReading> weighings)
    {
        var unfit = weighings.Where(weighing => !Fits(weighing, dry)).ToList();
        return 2 * unfit.Count > weighings.Count
            ? [new(dry, ReadingColumns.Value, Invariant($"{unfit.Count} of the {weighings.Count} weighings of this split do not lie between this mass and that with all its pores full ({Fullest(dry):0.##} kg)."), "Check the number on the piece and the unit of both.")]
            : unfit.Select(weighing => Fault(weighing, dry));
    }

    private static bool IsSamePiece(TakenReading one, TakenReading other) =>
        one.Observation.From.Class == other.Observation.From.Class && one.Observation.From.Piece.Equals(other.Observation.From.Piece, StringComparison.OrdinalIgnoreCase);

    private static bool Fits(TakenReading weighing, TakenReading dry)
    {
        var (mass, least) = ((MassObservation)weighing.Observation, (DryMassObservation)dry.Observation);
        var allowance = Deviations * Math.Sqrt(mass.Spread * mass.Spread + least.Spread * least.Spread);
        return mass.Kilograms >= least.Kilograms - allowance && mass.Kilograms <= Fullest(dry) + allowance * (1 + dry.Wood.MaximumMoisture);
    }

    /// <summary>With every pore full. [kg]</summary>
    private static double Fullest(TakenReading dry) => ((DryMassObservation)dry.Observation).Kilograms * (1 + dry.Wood.MaximumMoisture);

    private static CrossFault Fault(TakenReading weighing, TakenReading dry) => new(
        weighing,
        ReadingColumns.Value,
        Invariant($"By line {dry.Given.Line} ({dry.Observation.From.Words}) this split weighs at least that and at most {Fullest(dry):0.##} kg with all its pores full."),
        "Check the number on the piece and the unit.");
}
