namespace Rickyard.Core.Boxes;

/// <summary>What energy costs the user, in money of their own.</summary>
/// <param name="Electricity">Per kWh bought; null where not said.</param>
/// <param name="Gas">Per kWh bought; null where not said.</param>
/// <param name="Currency">As they write it, such as "$".</param>
public sealed record EnergyPrice(double? Electricity, double? Gas, string Currency)
{
    /// <summary>An amount as people write it: "$12.40", "12.40 kr".</summary>
    public string Write(double amount) => Currency.Length > 1 ? FormattableString.Invariant($"{amount:0.00} {Currency}") : FormattableString.Invariant($"{Currency}{amount:0.00}");
}
