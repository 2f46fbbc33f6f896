using System.Globalization;
using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Reads a moisture found by drying, and the one a supplier promised. Both must say their basis.</summary>
internal static class OvenRow
{
    /// <summary>Half of the integer percent to which a secondary oven test is reported (ASTM D4442, method B). [kg kg⁻¹]</summary>
    public const double LeastSpread = 0.005;

    private static readonly Dictionary<string, OvenPart> Parts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["whole"] = OvenPart.Whole, ["section"] = OvenPart.Section, ["core"] = OvenPart.Core,
    };

    /// <summary>An oven test.</summary>
    public static Sighting? Oven(GivenReading given, IntakeWood wood, RowFaults faults)
    {
        var part = PartOf(given, null, faults);
        if (Moisture(given, wood, faults) is not { } found || part is null) return null;
        return new($"{found.Words} of {Spoken(part.Value)} by drying", found.Basis, from => new OvenObservation(from, part.Value, found.Moisture, found.Spread));
    }

    /// <summary>A promise.</summary>
    public static Sighting? Promise(GivenReading given, IntakeWood wood, RowFaults faults) =>
        Moisture(given, wood, faults) is { } found ? new($"{found.Words} promised", found.Basis, from => new PromiseObservation(from, found.Moisture)) : null;

    /// <summary>What was dried, or null with what is wrong told.</summary>
    public static OvenPart? PartOf(GivenReading given, OvenPart? otherwise, RowFaults faults)
    {
        var text = given[ReadingColumns.Place];
        if (text.Length == 0 && otherwise is not null) return otherwise;
        if (Parts.TryGetValue(text, out var part)) return part;
        var near = NearName.Find(text, Parts.Keys);
        faults.Wrong(ReadingColumns.Place, text.Length == 0 ? "What was dried is missing." : $"{Echo.Of(text)} is no part of a split that is known here.", $"{(near is null ? "" : $"Did you mean \"{near}\"? ")}Give \"whole\", \"section\" (a full cross-section from mid-length) or \"core\".");
        return null;
    }

    /// <summary>How a table writes it.</summary>
    public static string Written(OvenPart part) => Parts.First(pair => pair.Value == part).Key;

    private static string Spoken(OvenPart part) => part switch { OvenPart.Whole => "the whole split", OvenPart.Section => "a section", _ => "the core" };

    private static (double Moisture, double Spread, MoistureBasis Basis, string Words)? Moisture(GivenReading given, IntakeWood wood, RowFaults faults)
    {
        if (MoistureText.Read(given, faults) is not { } text) return null;
        var (number, stated) = PlusMinus.Cut(text.Number);
        if (text.Basis is not { } basis) faults.Wrong(ReadingColumns.Unit, $"{Echo.Of(text.Number)} % does not say its basis.", MoistureText.WantedBasis);
        else if (Number(number) is not { } percent) faults.Wrong(ReadingColumns.Value, $"{Echo.Of(number)} is not a number.", "Give the moisture in percent, such as 24.");
        else if (IsPossible(percent, basis, wood, faults) && Spread(number, stated, percent, basis, faults) is { } spread)
            return (MoistureText.Fraction(percent / 100, basis), spread, basis, Invariant($"{percent:0.#} % {(basis == MoistureBasis.Wet ? "wet" : "dry")} basis"));
        return null;
    }

    private static bool IsPossible(double percent, MoistureBasis basis, IntakeWood wood, RowFaults faults)
    {
        var most = wood.MaximumMoisture;
        if (percent >= 0 && MoistureText.Fraction(percent / 100, basis) <= most) return true;
        faults.Wrong(
            ReadingColumns.Value,
            Invariant($"{percent:0.##} % is {(percent < 0 ? "below 0" : "more water than the pores of this wood can hold")}."),
            Invariant($"At a basic density of {wood.Case.BasicDensity:0} kg/m³ at most {100 * most:0} % dry basis ({100 * most / (1 + most):0} % wet basis) fits in; check the number and its basis."));
        return false;
    }

    // A point of wet basis is (1 + M)² points of dry basis.
    private static double? Spread(string number, string? stated, double percent, MoistureBasis basis, RowFaults faults)
    {
        var step = basis == MoistureBasis.Wet ? Math.Pow(1 + MoistureText.Fraction(percent / 100, basis), 2) / 100 : 0.01;
        if (stated is null) return Math.Max(LeastSpread, step * PlusMinus.LastDigit(number) / 2);
        if (Number(stated) is > 0 and < 100 and var spread) return step * spread;
        faults.Wrong(ReadingColumns.Value, $"{Echo.Of(stated)} behind \"±\" is no spread of a moisture.", "Give a standard deviation in points above 0, such as \"24 ± 1\"; or leave it out.");
        return null;
    }

    private static double? Number(string text) => double.TryParse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
