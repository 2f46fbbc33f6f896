using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Boxes;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>Reads what energy costs the user.</summary>
internal static partial class TariffSection
{
    private const string Wanted = "Give money for its energy, above 0 and at most 1 000 000, such as \"0.15 $/kWh\", \"€0.30/kWh\" or \"1.20 $/therm\".";
    private const double KilowattHoursPerTherm = 29.3001;
    private const double Dearest = 1e6;

    /// <summary>The prices, or null where none was said.</summary>
    public static EnergyPrice? Read(CaseObject box, CaseFindings findings)
    {
        if (box.Group("tariff", "electricity", "gas") is not { } tariff) return null;
        var (electricity, gas) = (Price(tariff, "electricity", findings), Price(tariff, "gas", findings));
        if (electricity is { } first && gas is { } second && first.Currency != second.Currency)
            findings.Wrong(tariff.Path, $"Electricity is priced in \"{first.Currency}\", gas in \"{second.Currency}\".", "Give both in the same money.");
        return (electricity ?? gas) is { } said ? new(electricity?.Amount, gas?.Amount, said.Currency) : null;
    }

    private static (double Amount, string Currency)? Price(CaseObject tariff, string key, CaseFindings findings)
    {
        if (tariff.Text(key, Wanted) is not { } text) return null;
        if (Of(Written().Match(text)) is { Amount: > 0 and <= Dearest } price) return price;
        findings.Wrong(tariff.PathOf(key), $"{Echo.Of(text)} is not a price of energy.", Wanted);
        return null;
    }

    // Money before or behind the number, not both and not neither.
    private static (double Amount, string Currency)? Of(Match match)
    {
        var (before, behind) = (match.Groups["before"].Value, match.Groups["behind"].Value);
        if (!match.Success || before.Length == 0 == (behind.Length == 0)) return null;
        var amount = double.Parse(match.Groups["amount"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return (match.Groups["unit"].Value.Equals("therm", StringComparison.OrdinalIgnoreCase) ? amount / KilowattHoursPerTherm : amount, before + behind);
    }

    [GeneratedRegex(@"^(?<before>[^\d\s./+-]{0,5})\s*(?<amount>\d+(?:\.\d+)?|\.\d+)\s*(?<behind>[^\d\s./+-]{0,5}?)\s*(?:/|per)\s*(?<unit>kwh|therm)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
