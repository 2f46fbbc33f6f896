using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Meters;

/// <summary>Sentences on a reading: what was corrected and by how much, which curve stands for the wood, and traps of the place and the weather.</summary>
internal static class PinNotes
{
    /// <summary>All that apply.</summary>
    internal static IReadOnlyList<string> Of(PinReading reading, Species species, PinPlace? place, SpeciesRows rows, TemperatureCorrection add, double moisture) =>
        [.. Temperature(reading, add), .. Curve(reading, species, rows, moisture), .. Place(place), .. Range(reading, moisture, rows)];

    private static IEnumerable<string> Temperature(PinReading reading, TemperatureCorrection add)
    {
        if (reading.Range != ShownRange.Number) yield break;
        if (reading.WoodCelsius is not { } celsius)
            yield return "The temperature of the wood is not known: 20 °C is taken, give or take 8 K, which widens the range. What counts is the wood at the pins, not the air.";
        else
            yield return Invariant($"Temperature: {Points(add.Best)} at {celsius:0.#} °C (published corrections, counted from 80 °F or from the meter's own zero, run from {Points(add.Least)} to {Points(add.Most)}).");
        if (reading.WoodCelsius is < PinCorrection.ColdestCelsius) yield return "The wood is colder than any published correction; -20 °C is taken. Warm a piece indoors and read again.";
        if (reading.WoodCelsius is > PinCorrection.HottestCelsius) yield return "The wood is hotter than the published corrections go; 50 °C is taken. Let a piece cool down in a closed bag and read again.";
        if (reading.WoodCelsius is < 0) yield return "The wood is frozen. Below fibre saturation that does no harm beyond the correction; wood that was wetter when it froze can read falsely dry, since ice does not conduct. Warm a piece and read again before trusting a dry answer.";
    }

    private static IEnumerable<string> Curve(PinReading reading, Species species, SpeciesRows rows, double moisture)
    {
        var names = string.Join(", ", rows.Rows.Select(row => row.Name));
        if (rows.Kind == RowKind.Group)
            yield return $"Nothing is published on how {species.CommonName} conducts: the mean of {rows.Rows.Count} woods of its kind stands in, and the range is wider.";
        else if (rows.Kind == RowKind.Related) yield return $"Nothing is published on how {species.CommonName} itself conducts: {names} stands in, and the range is wider.";
        else if (reading.Scale.Name != rows.Rows[0].Name && reading.Range == ShownRange.Number && moisture < rows.Ceiling(PinCorrection.Ceiling))
            yield return Invariant($"Species: {100 * reading.Shown:0.#} on the {reading.Scale.Name} scale is {100 * moisture:0.0} % in {species.CommonName} (row {names}).");
        foreach (var note in rows.Rows.Select(row => row.Note).Where(note => rows.Kind != RowKind.Group && note.Length > 0)) yield return $"The row of {names}: {note}.";
    }

    private static IEnumerable<string> Place(PinPlace? place) => place switch
    {
        PinPlace.EndGrain => ["End grain dries first: this says little of the inside. Saw or split at mid-length and read the fresh face."],
        PinPlace.SplitFace => ["A weathered face shows the outer centimetre; after rain or dew only the wet skin. The core is wetter while wood dries."],
        PinPlace.Side => ["Through bark the pins may not reach the wood, and under bark it dries last; after rain the bark alone is read."],
        PinPlace.FreshCore => ["A freshly split face shows the core, not the average: the mean of the piece is lower by a third to a half of the difference to its surface."],
        _ => ["Where the pins were is not said: ends and weathered faces read drier than the core."],
    };

    private static IEnumerable<string> Range(PinReading reading, double moisture, SpeciesRows rows)
    {
        var ceiling = rows.Ceiling(PinCorrection.Ceiling);
        if (reading.Range == ShownRange.Over || (reading.Range == ShownRange.Number && moisture >= ceiling))
            yield return Invariant($"Above about {100 * ceiling:0} % in this wood a pin meter only says wet: 35, 45 or 60 on the display mean the same. Weigh a split, or dry a section in an oven.");
        if (reading.Range == ShownRange.Under || (reading.Range == ShownRange.Number && moisture <= PinCorrection.Floor)) yield return "Below about 6 % a pin meter only says very dry.";
    }

    private static string Points(double points) => Invariant($"{points:+0.0;-0.0;0.0} points");
}
