using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>Reads the cook's band, such as "18-20 %"; a meter's scale is dry basis, so that is meant where no basis is said.</summary>
internal static partial class BandText
{
    private const string Wanted = "Give two moistures from 2 to 60 % dry basis, lower first, such as \"18-20 %\".";

    public static (double Low, double High)? Read(string text, OptionReading reading)
    {
        var match = Band().Match(text);
        if (!match.Success)
        {
            reading.Wrong("--band", $"{Echo.Of(text)} is not a band.", Wanted);
            return null;
        }

        var (low, high) = (Fraction(match, "low"), Fraction(match, "high"));
        if (low >= 0.02 && high <= 0.60 && low < high) return (low, high);
        reading.Wrong("--band", $"{Echo.Of(text)} is not a band that wood can be in.", Wanted);
        return null;
    }

    [GeneratedRegex(@"^\s*(?<low>\d+(?:\.\d+)?)\s*%?\s*(?:-|–|to)\s*(?<high>\d+(?:\.\d+)?)\s*%(?:\s*(?:dry(?: basis)?|(?<wet>wet(?: basis)?)))?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Band();

    private static double Fraction(Match match, string group)
    {
        var percent = double.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
        return !match.Groups["wet"].Success ? percent / 100 : percent < 100 ? percent / (100 - percent) : double.PositiveInfinity;
    }
}
