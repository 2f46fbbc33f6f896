using System.Globalization;
using System.Text.RegularExpressions;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>A number in a text, and how exactly it is given: by its own spread behind "±", else by half of its last digit.</summary>
internal static partial class PlusMinus
{
    /// <summary>What stands before "±", and what behind it; null where there is none.</summary>
    public static (string Value, string? Spread) Cut(string text)
    {
        var at = text.IndexOf('±', StringComparison.Ordinal);
        return at < 0 ? (text, null) : (text[..at].Trim(), text[(at + 1)..].Trim());
    }

    /// <summary>What the last digit of the last number counts: 0.01 of "2.31", 1 of "4 lb 6 oz", 0.5 of "5 1/2 oz".</summary>
    public static double LastDigit(string text)
    {
        var last = Number().Matches(text)[^1];
        return last.Groups["bottom"].Success ? 1 / double.Parse(last.Groups["bottom"].ValueSpan, CultureInfo.InvariantCulture) : Math.Pow(10, -last.Groups["decimals"].Length);
    }

    [GeneratedRegex(@"\d+\s*/\s*(?<bottom>\d+)|\d*\.(?<decimals>\d*)|\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
