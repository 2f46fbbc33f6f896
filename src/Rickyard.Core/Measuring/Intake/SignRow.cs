using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Reads a sign that was looked for: its name in place and yes or no as value, or its name alone as value.</summary>
internal static class SignRow
{
    private static readonly Dictionary<string, WoodSign> Signs = new(StringComparer.OrdinalIgnoreCase)
    {
        ["heavy"] = WoodSign.Heavy,
        ["checks"] = WoodSign.Checks, ["cracks"] = WoodSign.Checks,
        ["bark loose"] = WoodSign.BarkLoose, ["loose bark"] = WoodSign.BarkLoose,
        ["bubbling ends"] = WoodSign.BubblingEnds, ["bubbling"] = WoodSign.BubblingEnds,
        ["rings"] = WoodSign.Rings,
    };

    private static readonly Dictionary<string, bool> Answers = new(StringComparer.OrdinalIgnoreCase) { ["yes"] = true, ["y"] = true, ["true"] = true, ["no"] = false, ["n"] = false, ["false"] = false };

    public static Sighting? Read(GivenReading given, RowFaults faults)
    {
        var (place, value) = (given[ReadingColumns.Place], given[ReadingColumns.Value]);
        var named = place.Length > 0;
        if (Named(named ? place : value, named ? ReadingColumns.Place : ReadingColumns.Value, faults) is not { } sign) return null;
        if (!named) return Seen(sign, true);
        if (Answers.TryGetValue(value, out var seen)) return Seen(sign, seen);
        faults.Wrong(ReadingColumns.Value, value.Length == 0 ? "Whether it was there is missing." : $"{Echo.Of(value)} is neither yes nor no.", "Give \"yes\" or \"no\": was it there?");
        return null;
    }

    /// <summary>How a table writes it.</summary>
    public static string Written(WoodSign sign) => Signs.First(pair => pair.Value == sign).Key;

    private static Sighting Seen(WoodSign sign, bool seen) => new($"{Written(sign)}: {(seen ? "yes" : "no")}", null, from => new SignObservation(from, sign, seen));

    private static WoodSign? Named(string text, string column, RowFaults faults)
    {
        if (Signs.TryGetValue(text, out var sign)) return sign;
        var near = NearName.Find(text, Signs.Keys);
        faults.Wrong(column, text.Length == 0 ? "Which sign was looked for is missing." : $"{Echo.Of(text)} is no sign that is known.", $"{(near is null ? "" : $"Did you mean \"{near}\"? ")}Give \"heavy\", \"checks\", \"bark loose\", \"bubbling ends\" or \"rings\" as place, and \"yes\" or \"no\" as value.");
        return null;
    }
}
