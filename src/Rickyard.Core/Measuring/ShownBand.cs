using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring;

/// <summary>A band of moisture as a person says it, such as "18-20 %"; a meter's display is dry basis, so that is meant where no basis is said.</summary>
/// <param name="Low">Lower edge. [kg kg⁻¹]</param>
/// <param name="High">Upper edge. [kg kg⁻¹]</param>
public sealed partial record ShownBand(double Low, double High)
{
    private const double Driest = 0.02, Wettest = 0.60;
    private const string Wanted = "Give two moistures from 2 to 60 % dry basis, lower first, such as \"18-20 %\".";

    /// <summary>The band, or what is wrong with it.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">Option or key it came from.</param>
    public static Result<ShownBand> Read(string text, string field)
    {
        var match = Shape().Match(text);
        if (!match.Success) return ResultOf.Failure<ShownBand>(field, $"{Echo.Of(text)} is not a band.", Wanted);
        var band = new ShownBand(Fraction(match, "low"), Fraction(match, "high"));
        return band.Low >= Driest && band.High <= Wettest && band.Low < band.High
            ? ResultOf.Success(band)
            : ResultOf.Failure<ShownBand>(field, $"{Echo.Of(text)} is not a band that wood can be in.", Wanted);
    }

    [GeneratedRegex(@"^\s*(?<low>\d+(?:\.\d+)?)\s*%?\s*(?:-|–|to)\s*(?<high>\d+(?:\.\d+)?)\s*%(?:\s*(?:dry(?: basis)?|(?<wet>wet(?: basis)?)))?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    private static double Fraction(Match match, string group)
    {
        var percent = double.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
        return !match.Groups["wet"].Success ? percent / 100 : percent < 100 ? percent / (100 - percent) : double.PositiveInfinity;
    }
}
