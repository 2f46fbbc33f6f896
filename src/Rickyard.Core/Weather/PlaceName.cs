using System.Globalization;
using System.Text;

namespace Rickyard.Core.Weather;

/// <summary>A place as a person wrote it, compared forgivingly with the places we know.</summary>
internal sealed class PlaceName
{
    private static readonly Dictionary<string, string> StateLetters = new()
    {
        ["al"] = "alabama", ["ak"] = "alaska", ["az"] = "arizona", ["ar"] = "arkansas", ["ca"] = "california", ["co"] = "colorado", ["ct"] = "connecticut",
        ["de"] = "delaware", ["fl"] = "florida", ["ga"] = "georgia", ["hi"] = "hawaii", ["id"] = "idaho", ["il"] = "illinois", ["in"] = "indiana",
        ["ia"] = "iowa", ["ks"] = "kansas", ["ky"] = "kentucky", ["la"] = "louisiana", ["me"] = "maine", ["md"] = "maryland", ["ma"] = "massachusetts",
        ["mi"] = "michigan", ["mn"] = "minnesota", ["ms"] = "mississippi", ["mo"] = "missouri", ["mt"] = "montana", ["ne"] = "nebraska", ["nv"] = "nevada",
        ["nh"] = "new hampshire", ["nj"] = "new jersey", ["nm"] = "new mexico", ["ny"] = "new york", ["nc"] = "north carolina", ["nd"] = "north dakota",
        ["oh"] = "ohio", ["ok"] = "oklahoma", ["or"] = "oregon", ["pa"] = "pennsylvania", ["ri"] = "rhode island", ["sc"] = "south carolina",
        ["sd"] = "south dakota", ["tn"] = "tennessee", ["tx"] = "texas", ["ut"] = "utah", ["vt"] = "vermont", ["va"] = "virginia", ["wa"] = "washington",
        ["wv"] = "west virginia", ["wi"] = "wisconsin", ["wy"] = "wyoming", ["us"] = "united states", ["usa"] = "united states",
    };

    private readonly string _whole;
    private readonly string _city;
    private readonly string[] _rest;

    private PlaceName(string whole, string city, string[] rest)
    {
        _whole = whole;
        _city = city;
        _rest = rest;
    }

    /// <summary>Splits at commas: the city first, then whatever narrows it down.</summary>
    public static PlaceName Parse(string text)
    {
        var parts = text.Split([',', ';', '('], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Plain).ToArray();
        return new(Plain(text), parts.FirstOrDefault() ?? "", [.. parts.Skip(1).Select(part => StateLetters.GetValueOrDefault(part, part))]);
    }

    /// <summary>City (whole, or its first name of several) and every narrowing part agree.</summary>
    public bool Fits(MonthlyNormals place) => FitsParts(place) || FitsWithoutComma(place);

    /// <summary>Letters that would have to change, for suggestions.</summary>
    public int Unlikeness(MonthlyNormals place) => Math.Min(Edits(_city, Plain(place.City)), Edits(_whole, Plain(place.Name)));

    private bool FitsParts(MonthlyNormals place)
    {
        var city = Plain(place.City);
        string region = Plain(place.Region), country = Plain(place.Country);
        return _city.Length > 0 && (city == _city || Names(city).Contains(_city)) && _rest.All(part => part == region || part == country);
    }

    private bool FitsWithoutComma(MonthlyNormals place)
    {
        var city = Plain(place.City);
        if (!_whole.StartsWith(city + " ", StringComparison.Ordinal)) return false;
        var rest = _whole[(city.Length + 1)..];
        rest = StateLetters.GetValueOrDefault(rest, rest);
        return rest == Plain(place.Region) || rest == Plain(place.Country);
    }

    /// <summary>"dublin airport" is also dublin; "minneapolis st paul" also minneapolis and st paul; "bourges area" also bourges.</summary>
    private static string[] Names(string city)
    {
        foreach (var ending in new[] { " airport", " observatory", " area" })
        {
            if (city.EndsWith(ending, StringComparison.Ordinal)) return [city[..^ending.Length]];
        }

        return city == "minneapolis st paul" ? ["minneapolis", "st paul"] : [];
    }

    private static string Plain(string text)
    {
        var letters = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(letter)) letters.Append(letter);
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark && letter != '.' && letter != '\'') letters.Append(' ');
        }

        var words = letters.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words.Select(word => word switch { "saint" => "st", "fort" => "ft", "mount" => "mt", _ => word }));
    }

    private static int Edits(string left, string right)
    {
        var row = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (left[i - 1] == right[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[right.Length];
    }
}
