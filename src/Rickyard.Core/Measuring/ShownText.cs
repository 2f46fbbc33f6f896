using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring;

/// <summary>Reads what a meter shows: a number, or that it went off its scale.</summary>
public static partial class ShownText
{
    private const string Wanted = "Give what the display shows, dry basis: a number from 0 to 100 such as 20, \"over\" or \"under\", or \">40\" or \"<6\".";

    /// <summary>What was shown, or the problem.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">Option, key or column it came from.</param>
    public static Result<MeterDisplay> Read(string text, string field)
    {
        var match = Shape().Match(text);
        if (!match.Success || (!match.Groups["number"].Success && !match.Groups["over"].Success && !match.Groups["under"].Success)) return ResultOf.Failure<MeterDisplay>(field, $"{Echo.Of(text)} is not what a pin meter shows.", Wanted);
        if (match.Groups["wet"].Success)
            return ResultOf.Failure<MeterDisplay>(field, $"{Echo.Of(text)} is wet basis, and pin meters show dry basis.", "Give the number as the display shows it; 20 % wet basis is 25 % dry basis.");
        var range = match.Groups["over"].Success ? ShownRange.Over : match.Groups["under"].Success ? ShownRange.Under : ShownRange.Number;
        if (!match.Groups["number"].Success) return ResultOf.Success(new MeterDisplay(0, range));
        var percent = double.Parse(match.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        return percent <= 100 ? ResultOf.Success(new MeterDisplay(percent / 100, range)) : ResultOf.Failure<MeterDisplay>(field, $"{Echo.Of(text)} is more than any pin meter shows.", Wanted);
    }

    [GeneratedRegex(
        @"^\s*(?:(?<over>over(?:\s*range)?|>)|(?<under>under(?:\s*range)?|<))?\s*(?<number>\d+(?:\.\d+)?)?\s*%?\s*(?:dry(?:\s*basis)?|(?<wet>wet(?:\s*basis)?))?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
