using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>The kinds of reading as people write them; the first word of a kind is the one a table is written with.</summary>
internal static class KindWords
{
    private static readonly (string Word, ReadingKind Kind)[] Words =
    [
        ("pin", ReadingKind.Pin), ("weighing", ReadingKind.Weighing), ("oven", ReadingKind.Oven), ("oven-dry mass", ReadingKind.OvenDryMass), ("promise", ReadingKind.Promise), ("sign", ReadingKind.Sign),
        ("mass", ReadingKind.Weighing), ("weight", ReadingKind.Weighing), ("oven dry mass", ReadingKind.OvenDryMass), ("dry mass", ReadingKind.OvenDryMass),
    ];

    private static readonly string[] Known = [.. Words.DistinctBy(word => word.Kind).Select(word => word.Word)];

    public static string Of(ReadingKind kind) => Words.First(word => word.Kind == kind).Word;

    /// <summary>The kind, or null with what is wrong told.</summary>
    public static ReadingKind? Read(GivenReading given, RowFaults faults)
    {
        var text = given[ReadingColumns.Kind];
        foreach (var (word, kind) in Words)
            if (word.Equals(text, StringComparison.OrdinalIgnoreCase)) return kind;
        var near = NearName.Find(text, Words.Select(word => word.Word));
        faults.Wrong(ReadingColumns.Kind, text.Length == 0 ? "What kind of reading it is is missing." : $"{Echo.Of(text)} is no kind of reading.", $"{(near is null ? "" : $"Did you mean \"{near}\"? ")}Give {CaseObject.Listed(Known, "or")}.");
        return null;
    }
}
