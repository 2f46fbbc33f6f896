using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Which split a reading is of.</summary>
/// <param name="Name">Number or name; empty where it was not marked.</param>
/// <param name="Wood">Its wood.</param>
internal sealed record PieceName(string Name, IntakeWood Wood)
{
    private const int Longest = 60;

    /// <summary>The piece, or null with what is wrong told. "small/3" is piece 3 of the class "small".</summary>
    public static PieceName? Read(GivenReading given, IntakeLot lot, RowFaults faults)
    {
        var text = given[ReadingColumns.Piece];
        if (text.Length > Longest) return Wrong(faults, $"{Echo.Of(text)} is a long name for a piece.", "Give the number on it.");
        var wood = lot.Woods.OrderByDescending(one => one.Class.Length).FirstOrDefault(one => IsOf(text, one.Class));
        if (wood is not null) return new(text[wood.Class.Length..].TrimStart('/').Trim(), wood);
        return lot.HasClasses ? Wrong(faults, Unknown(text), Wanted(text, lot)) : new(text, lot.Woods[0]);
    }

    private static bool IsOf(string text, string name) =>
        name.Length > 0 && text.StartsWith(name, StringComparison.OrdinalIgnoreCase) && (text.Length == name.Length || text[name.Length] == '/');

    private static string Unknown(string text) =>
        text.Length == 0 ? "Which class of the charge it is of is missing." : $"{Echo.Of(text)} names no class of the charge.";

    private static string Wanted(string text, IntakeLot lot)
    {
        List<string> names = [.. lot.Woods.Select(wood => wood.Class)];
        var near = NearName.Find(text.Split('/')[0], names);
        return $"{(near is null ? "" : $"Did you mean \"{near}\"? ")}Give {CaseObject.Listed(names, "or")}, and for a marked split its number behind, such as \"{names[0]}/3\".";
    }

    private static PieceName? Wrong(RowFaults faults, string what, string toDo)
    {
        faults.Wrong(ReadingColumns.Piece, what, toDo);
        return null;
    }
}
