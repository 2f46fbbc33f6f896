using System.Diagnostics.CodeAnalysis;

namespace Rickyard.Core.Quantities;

/// <summary>A quantity that people type with its unit, and the range that makes sense in one place.</summary>
/// <param name="Units">Kind of quantity and its units.</param>
/// <param name="Lowest">Lowest value allowed, in the unit kept inside.</param>
/// <param name="Highest">Highest value allowed, in the unit kept inside.</param>
/// <param name="Range">What is allowed, in words: "2 mm to 1 m".</param>
/// <param name="Example">One that is right.</param>
public sealed record TypedQuantity(QuantityUnits Units, double Lowest, double Highest, string Range, string Example)
{
    /// <summary>What a message asks for.</summary>
    public string Wanted => $"Give {Units.Name} of {Range} with its unit ({Units.Allowed}), such as \"{Example}\".";

    /// <summary>Reads a text such as "16 in" or "1 ft 4 in".</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">Key or option it came from.</param>
    /// <param name="value">In the unit kept inside; 0 when there is a problem.</param>
    /// <param name="problem">What is wrong with it.</param>
    public bool TryRead(string text, string field, out double value, [NotNullWhen(false)] out Problem? problem)
    {
        value = 0;
        problem = Fault(text, ref value) is { } fault ? new(field, fault, Wanted) : null;
        return problem is null;
    }

    private string? Fault(string text, ref double value)
    {
        var echo = Echo.Of(text);
        if (text.Trim().Length == 0) return "It is empty.";
        if (NumberAndUnit.Parts(text) is not { } parts) return $"{echo} is not {Units.Name}.";
        if (parts.FirstOrDefault(part => part.Unit.Length == 0) is not null) return $"{echo} has no unit.";
        if (parts.FirstOrDefault(part => Units.Find(part.Unit) is null) is { } unknown) return UnknownUnit(echo, unknown.Unit);
        if (parts.Count > 1 && !Units.Adds) return $"{echo} gives {parts.Count} values where one is wanted.";
        if (parts.Skip(1).Any(part => part.Number < 0)) return $"{echo} has a sign in the middle.";
        var total = Total(parts);
        if (!(total >= Lowest && total <= Highest)) return $"{echo} is {(total < Lowest ? "below" : "above")} what is possible here.";
        value = total;
        return null;
    }

    // "-1 ft 4 in" is minus one foot four.
    private double Total(IReadOnlyList<NumberAndUnit> parts) => parts is [var only]
        ? Converted(only.Unit, only.Number)
        : Math.Sign(parts[0].Number) * parts.Sum(part => Converted(part.Unit, Math.Abs(part.Number)));

    private double Converted(string unit, double number) => Units.Find(unit)!(number);

    private string UnknownUnit(string echo, string unit) => unit switch
    {
        [',', ..] => $"{echo} has a comma in its number; write a point.",
        "%" when Units == QuantityUnits.Moisture => $"{echo} does not say its basis.",
        _ => $"{echo} has the unit \"{unit}\", which is not read here.",
    };
}
