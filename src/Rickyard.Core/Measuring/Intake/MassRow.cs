using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Reads the mass of a marked split, as it was or oven-dry.</summary>
internal static class MassRow
{
    /// <summary>Of an oven-dry mass reckoned from a section: 3 points of moisture between section and split at 60 to 80 %; judgement. [–]</summary>
    private const double FromSectionSpread = 0.02;

    /// <summary>A weighing.</summary>
    public static Sighting? Weighing(GivenReading given, IntakeWood wood, RowFaults faults)
    {
        var mass = MassText.Read(given, MassText.LeastSpread, faults);
        if (mass is null || !IsOfLot(given, mass, wood.LightestPiece, wood.HeaviestPiece, "with all its pores full of water", faults)) return null;
        return new(mass.Words, null, from => new MassObservation(from, mass.Kilograms, mass.Spread));
    }

    /// <summary>An oven-dry mass: of the whole split dried out, or reckoned from a section of it.</summary>
    public static Sighting? OvenDry(GivenReading given, IntakeWood wood, RowFaults faults)
    {
        var part = OvenRow.PartOf(given, OvenPart.Section, faults);
        if (part == OvenPart.Core) faults.Wrong(ReadingColumns.Place, "A bit from the core says little of the dry mass of the whole split.", "Give \"whole\" or \"section\".");
        var mass = MassText.Read(given, part == OvenPart.Whole ? MassText.LeastSpread : FromSectionSpread, faults);
        if (mass is null || part is null || !IsOfLot(given, mass, wood.LightestPiece, wood.HeaviestPiece / (1 + wood.MaximumMoisture), "oven-dry", faults)) return null;
        return new($"oven-dry {mass.Words}", null, from => new DryMassObservation(from, mass.Kilograms, mass.Spread));
    }

    private static bool IsOfLot(GivenReading given, MassText mass, double lightest, double heaviest, string how, RowFaults faults)
    {
        if (mass.Kilograms >= lightest && mass.Kilograms <= heaviest) return true;
        faults.Wrong(
            ReadingColumns.Value,
            mass.Kilograms > heaviest
                ? Invariant($"{Echo.Of(mass.Words)} is more than the largest split of this lot can weigh, {heaviest:0.##} kg {how}.")
                : Invariant($"{Echo.Of(mass.Words)} is less than the smallest split of this lot weighs oven-dry, {lightest:0.##} kg."),
            "Check the unit and the number on the piece; where both are right, mend \"split\" or \"size spread\" in the case.");
        return false;
    }
}
