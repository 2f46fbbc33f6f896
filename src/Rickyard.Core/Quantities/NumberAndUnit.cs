using System.Globalization;
using System.Text.RegularExpressions;

namespace Rickyard.Core.Quantities;

/// <summary>A number and the unit written behind it.</summary>
/// <param name="Number">The number; a fraction such as 5 1/2 is worked out.</param>
/// <param name="Unit">The unit as written; empty when there is none.</param>
internal sealed partial record NumberAndUnit(double Number, string Unit)
{
    /// <summary>Every part of a text such as "1 ft 4 in", or null where it does not read so.</summary>
    public static IReadOnlyList<NumberAndUnit>? Parts(string text)
    {
        var parts = new List<NumberAndUnit>();
        var at = 0;
        var plain = text.Trim().Replace('−', '-');
        while (at < plain.Length)
        {
            var match = Part().Match(plain, at);
            if (!match.Success || match.Length == 0) return null;
            parts.Add(new(NumberOf(match), match.Groups["unit"].Value.Trim()));
            at += match.Length;
        }

        return parts.Count > 0 ? parts : null;
    }

    // A number (4, 4.6, 1/2, 5 1/2), then all that follows up to the next word that begins with a digit.
    [GeneratedRegex(@"\G\s*(?<sign>[+-]?)\s*(?:(?:(?<whole>\d+)\s+)?(?<top>\d+)\s*/\s*(?<bottom>\d+)|(?<decimal>(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?))(?<unit>(?:[^\d\s]\S*)?(?:\s+[^\d\s+-]\S*)*)\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Part();

    private static double NumberOf(Match match)
    {
        var size = match.Groups["decimal"].Success
            ? Value(match, "decimal")
            : (match.Groups["whole"].Success ? Value(match, "whole") : 0) + Value(match, "top") / Value(match, "bottom");
        return match.Groups["sign"].Value == "-" ? -size : size;
    }

    private static double Value(Match match, string group) => double.Parse(match.Groups[group].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture);
}
