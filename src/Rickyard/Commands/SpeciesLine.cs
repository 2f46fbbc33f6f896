using System.Globalization;

namespace Rickyard.Commands;

/// <summary>One value of a wood as it is shown; without a number where the value is a word.</summary>
/// <param name="Key">Name in JSON, with its unit.</param>
/// <param name="Name">Name on screen.</param>
/// <param name="Number">In the unit shown.</param>
/// <param name="Decimals">Digits behind the point on screen.</param>
/// <param name="Unit">Unit, or the word itself.</param>
/// <param name="Mark">How well it is vouched for.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record SpeciesLine(string Key, string Name, double? Number, int Decimals, string Unit, string Mark, string Source)
{
    /// <summary>The number as it is shown; empty where the value is a word.</summary>
    public string Figure => Number?.ToString($"F{Decimals}", CultureInfo.InvariantCulture) ?? "";
}
