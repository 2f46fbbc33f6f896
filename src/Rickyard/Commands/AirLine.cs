using System.Globalization;

namespace Rickyard.Commands;

/// <summary>One property of air as it is shown.</summary>
/// <param name="Key">Name in JSON, with its unit.</param>
/// <param name="Name">Name on screen.</param>
/// <param name="Value">In the unit shown.</param>
/// <param name="Decimals">Digits behind the point on screen.</param>
/// <param name="Unit">Unit on screen.</param>
internal sealed record AirLine(string Key, string Name, double Value, int Decimals, string Unit)
{
    /// <summary>The value as it is shown.</summary>
    public string Text => Value.ToString($"F{Decimals}", CultureInfo.InvariantCulture);
}
