using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>One group of keys of a case file. Whatever is asked of it and is wrong goes to the findings with the path of its key.</summary>
internal sealed class CaseObject
{
    private readonly Dictionary<string, JsonElement> _values = [];
    private readonly CaseFindings _findings;

    private CaseObject(JsonElement element, string path, IReadOnlyList<string> keys, CaseFindings findings)
    {
        (Path, _findings) = (path, findings);
        foreach (var member in element.EnumerateObject())
        {
            if (!keys.Contains(member.Name)) Unknown(member, keys);
            else if (!_values.TryAdd(member.Name, member.Value)) findings.Wrong(PathOf(member.Name), "The key is given twice.", "Give it once.");
        }
    }

    /// <summary>Path of this group, empty for the whole file.</summary>
    public string Path { get; }

    /// <summary>The known keys that are there.</summary>
    public IReadOnlyCollection<string> Keys => _values.Keys;

    public static CaseObject? From(JsonElement element, string path, IReadOnlyList<string> keys, CaseFindings findings)
    {
        if (element.ValueKind == JsonValueKind.Object) return new(element, path, keys, findings);
        findings.Wrong(path.Length > 0 ? path : "case", $"{Echo.Of(element.GetRawText())} is not a group of keys in {{ }}.", $"Give {{ … }} with {Listed(keys)}.");
        return null;
    }

    public bool Has(string key) => _values.ContainsKey(key);

    public string PathOf(string key) => Path.Length == 0 ? key : $"{Path}.{key}";

    /// <summary>A group inside this one, or null when it is left out or no group.</summary>
    public CaseObject? Group(string key, params IReadOnlyList<string> keys) =>
        _values.TryGetValue(key, out var value) ? From(value, PathOf(key), keys, _findings) : null;

    /// <summary>A group that must be there.</summary>
    public CaseObject? NeededGroup(string key, params IReadOnlyList<string> keys)
    {
        if (!Has(key)) Missing(key, $"Give {{ … }} with {Listed(keys)}.");
        return Group(key, keys);
    }

    /// <summary>A list of groups that must have at least one.</summary>
    public IReadOnlyList<CaseObject> Groups(string key, params IReadOnlyList<string> keys)
    {
        var value = _values[key];
        if (value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0)
            return [.. value.EnumerateArray().Select((item, index) => From(item, $"{PathOf(key)}[{index}]", keys, _findings)).OfType<CaseObject>()];
        _findings.Wrong(PathOf(key), $"{Echo.Of(value.GetRawText())} is not a list with something in it.", $"Give [ {{ … }}, … ], each with {Listed(keys)}.");
        return [];
    }

    /// <summary>A text, or null when it is left out or no text.</summary>
    public string? Text(string key, string whatToDo)
    {
        if (!_values.TryGetValue(key, out var value)) return null;
        if (value.ValueKind == JsonValueKind.String && value.GetString() is { } text && text.Trim().Length > 0) return text.Trim();
        WrongKind(key, value.ValueKind == JsonValueKind.String ? "is empty" : "is not a text in quotation marks", whatToDo);
        return null;
    }

    /// <summary>A text that must be there.</summary>
    public string? NeededText(string key, string whatToDo)
    {
        if (!Has(key)) Missing(key, whatToDo);
        return Text(key, whatToDo);
    }

    /// <summary>A quantity, or null when it is left out or wrong.</summary>
    public double? Quantity(string key, TypedQuantity allowed)
    {
        if (!_values.TryGetValue(key, out var value)) return null;
        if (value.ValueKind == JsonValueKind.Number) WrongKind(key, "is a bare number without a unit", allowed.Wanted);
        else if (value.ValueKind != JsonValueKind.String) WrongKind(key, $"is not {allowed.Units.Name}", allowed.Wanted);
        else if (allowed.TryRead(value.GetString()!, PathOf(key), out var read, out var problem)) return read;
        else _findings.Wrong(problem);
        return null;
    }

    /// <summary>A quantity that must be there.</summary>
    public double? NeededQuantity(string key, TypedQuantity allowed)
    {
        if (!Has(key)) Missing(key, allowed.Wanted);
        return Quantity(key, allowed);
    }

    /// <summary>A quantity whose default is said when it is left out.</summary>
    public double QuantityOr(string key, TypedQuantity allowed, double otherwise, string assumption)
    {
        if (!Has(key)) _findings.Assume(assumption);
        return Quantity(key, allowed) ?? otherwise;
    }

    /// <summary>A whole number, or null when it is left out or wrong.</summary>
    public int? Count(string key, int lowest, int highest)
    {
        if (!_values.TryGetValue(key, out var value)) return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var count) && count >= lowest && count <= highest) return count;
        WrongKind(key, "is not a whole number that is possible here", string.Create(CultureInfo.InvariantCulture, $"Give {lowest} to {highest}, without quotation marks."));
        return null;
    }

    /// <summary>A plain number, or null when it is left out or wrong.</summary>
    public double? Number(string key, double lowest, double highest)
    {
        if (!_values.TryGetValue(key, out var value)) return null;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number >= lowest && number <= highest) return number;
        WrongKind(key, "is not a number that is possible here", string.Create(CultureInfo.InvariantCulture, $"Give {lowest} to {highest}, without unit and quotation marks."));
        return null;
    }

    /// <summary>True or false; the default is said when it is left out.</summary>
    public bool FlagOr(string key, bool otherwise, string assumption)
    {
        if (!_values.TryGetValue(key, out var value)) _findings.Assume(assumption);
        else if (value.ValueKind is JsonValueKind.True or JsonValueKind.False) return value.GetBoolean();
        else WrongKind(key, "is neither true nor false", "Give true or false, without quotation marks.");
        return otherwise;
    }

    /// <summary>One of a few words, or null when it is left out or none of them.</summary>
    public T? Choice<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        var allowed = $"Give {Listed([.. words.Keys], "or")}.";
        if (Text(key, allowed) is not { } word) return null;
        if (words.TryGetValue(word, out var choice)) return choice;
        _findings.Wrong(PathOf(key), $"{Echo.Of(word)} is not known.", NearName.Find(word, words.Keys) is { } near ? $"Did you mean \"{near}\"? {allowed}" : allowed);
        return null;
    }

    /// <summary>A calendar day, or null when it is left out or none.</summary>
    public LocalDate? Day(string key)
    {
        const string Wanted = "Give a day of the calendar as year-month-day, such as \"2024-05-14\".";
        if (Text(key, Wanted) is not { } text) return null;
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success && parsed.Value.Year is >= 1800 and <= 2200) return parsed.Value;
        _findings.Wrong(PathOf(key), $"{Echo.Of(text)} is not a day of the calendar{(parsed.Success ? " between the years 1800 and 2200" : "")}.", Wanted);
        return null;
    }

    /// <summary>Whether a value is itself a group.</summary>
    public bool IsGroup(string key) => _values.TryGetValue(key, out var value) && value.ValueKind == JsonValueKind.Object;

    public void Missing(string key, string whatToDo) => _findings.Wrong(PathOf(key), "It is missing.", whatToDo);

    /// <summary>"a", "b" and "c".</summary>
    public static string Listed(IReadOnlyList<string> names, string last = "and") => names.Count == 1
        ? $"\"{names[0]}\""
        : $"{string.Join(", ", names.SkipLast(1).Select(name => $"\"{name}\""))} {last} \"{names[^1]}\"";

    private void WrongKind(string key, string what, string whatToDo) => _findings.Wrong(PathOf(key), $"{Echo.Of(_values[key].GetRawText().Trim('"'))} {what}.", whatToDo);

    private void Unknown(JsonProperty member, IReadOnlyList<string> keys) => _findings.Wrong(
        PathOf(member.Name),
        $"The key {Echo.Of(member.Name)} is not known here.",
        NearName.Find(member.Name, keys) is { } near ? $"Did you mean \"{near}\"? Known are {Listed(keys)}." : $"Known are {Listed(keys)}.");
}
