using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>A mass with its unit in either of the columns of value and unit, and its spread.</summary>
/// <param name="Words">As it was written: "4 lb 6 oz".</param>
/// <param name="Kilograms">[kg]</param>
/// <param name="Spread">Standard deviation: half of the last digit given, or as said behind "±". [kg]</param>
internal sealed record MassText(string Words, double Kilograms, double Spread)
{
    /// <summary>Of the mass, at least: a kitchen or hanging scale, the piece hung up again; judgement. [–]</summary>
    public const double LeastSpread = 0.003;

    private static readonly TypedQuantity Piece = new(QuantityUnits.Mass, 0.005, 500, "5 g to 500 kg", "2.31 kg\" or \"4 lb 6 oz");

    /// <summary>The mass, or null with what is wrong told.</summary>
    /// <param name="given">The reading.</param>
    /// <param name="leastSpread">Smallest spread where none is said. [–]</param>
    /// <param name="faults">Where problems go.</param>
    public static MassText? Read(GivenReading given, double leastSpread, RowFaults faults)
    {
        var (value, spread) = PlusMinus.Cut(given[ReadingColumns.Value]);
        var unit = given[ReadingColumns.Unit];
        if (Typed(value, unit, given, faults) is not { } words) return null;
        if (!Piece.TryRead(words, given.FieldOf(ReadingColumns.Value), out var kilograms, out var problem))
        {
            faults.Wrong(problem);
            return null;
        }

        return spread is null ? new(words, kilograms, Math.Max(leastSpread * kilograms, HalfDigit(words))) : Stated(words, kilograms, Typed(spread, unit, given, faults), faults);
    }

    private static string? Typed(string value, string unit, GivenReading given, RowFaults faults)
    {
        var parts = NumberAndUnit.Parts(value);
        if (parts is not [.., { Unit.Length: > 0 }]) return unit.Length == 0 ? value : $"{value} {unit}";
        if (unit.Length == 0 || parts.Any(part => Means(part.Unit, unit)) || Means(string.Concat(parts.Select(part => part.Unit)), unit.Replace(" ", "", StringComparison.Ordinal))) return value;
        faults.Wrong(ReadingColumns.Unit, $"The value {Echo.Of(value)} has a unit of its own, and {Echo.Of(unit)} is another.", "Give the unit once.");
        return null;

        bool Means(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase)
            || (QuantityUnits.Mass.Find(one) is { } left && QuantityUnits.Mass.Find(other) is { } right && left(1).Equals(right(1)));
    }

    private static MassText? Stated(string words, double kilograms, string? spread, RowFaults faults)
    {
        if (spread is not null && NumberAndUnit.Parts(spread) is [{ Number: > 0 } part] && QuantityUnits.Mass.Find(part.Unit) is { } convert && convert(part.Number) < kilograms)
            return new(words, kilograms, convert(part.Number));
        if (spread is not null) faults.Wrong(ReadingColumns.Value, $"{Echo.Of(spread)} behind \"±\" is no spread of this mass.", "Give a standard deviation above 0 and below the mass, such as \"2.31 ± 0.01 kg\"; or leave it out.");
        return null;
    }

    private static double HalfDigit(string words)
    {
        var last = NumberAndUnit.Parts(words)![^1];
        return QuantityUnits.Mass.Find(last.Unit)!(PlusMinus.LastDigit(words)) / 2;
    }
}
