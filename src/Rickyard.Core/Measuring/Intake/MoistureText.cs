using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>A moisture as it stands in the columns of value and unit: what is left of the value without unit and basis, and the basis.</summary>
/// <param name="Number">"24", "over", ">40".</param>
/// <param name="Basis">The basis said in one of the columns, or null where none is.</param>
internal sealed partial record MoistureText(string Number, MoistureBasis? Basis)
{
    public const string WantedBasis = "Give \"% dry basis\" (water over oven-dry wood) or \"% wet basis\" (water over wood and water) as its unit.";

    /// <summary>Both columns, or null with what is wrong told.</summary>
    public static MoistureText? Read(GivenReading given, RowFaults faults)
    {
        var (value, unit) = (given[ReadingColumns.Value], given[ReadingColumns.Unit]);
        var inValue = Tail().Match(value);
        var number = value[..inValue.Index].Trim();
        var inUnit = Tail().Match(unit);
        if (number.Length == 0) return Wrong(faults, ReadingColumns.Value, "The value is missing.", "Give what was read.");
        if (inUnit.Index > 0) return Wrong(faults, ReadingColumns.Unit, $"{Echo.Of(unit)} is no unit of moisture.", WantedBasis);
        var (first, second) = (BasisOf(inValue), BasisOf(inUnit));
        if (first is not null && second is not null && first != second)
            return Wrong(faults, ReadingColumns.Unit, $"The value {Echo.Of(value)} and the unit {Echo.Of(unit)} have different bases.", WantedBasis);
        return new(number, first ?? second);
    }

    /// <summary>From a share on a basis to water over oven-dry wood; a wet basis of 1 or more is no moisture. [kg kg⁻¹]</summary>
    public static double Fraction(double share, MoistureBasis? basis) => basis != MoistureBasis.Wet ? share : share < 1 ? share / (1 - share) : double.PositiveInfinity;

    private static MoistureBasis? BasisOf(Match tail) => tail.Groups["dry"].Success ? MoistureBasis.Dry : tail.Groups["wet"].Success ? MoistureBasis.Wet : null;

    private static MoistureText? Wrong(RowFaults faults, string column, string what, string toDo)
    {
        faults.Wrong(column, what, toDo);
        return null;
    }

    // Always matches, at the end if nothing else.
    [GeneratedRegex(@"\s*(?:%|\bpercent)?\s*(?:\b(?:(?<dry>dry(?:\s+basis)?|d\.?b\.?)|(?<wet>wet(?:\s+basis)?|w\.?b\.?)))?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Tail();
}
