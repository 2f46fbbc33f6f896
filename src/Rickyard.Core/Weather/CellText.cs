using System.Globalization;

namespace Rickyard.Core.Weather;

/// <summary>What the cells of weather tables hold: numbers, and the many ways of saying that there is none.</summary>
internal static class CellText
{
    private static readonly HashSet<string> Missing = new(StringComparer.OrdinalIgnoreCase)
    {
        "", "NA", "N/A", "NaN", "null", "none", "M", "-", "--", "---", "-9999", "-9999.0", "-999", "-999.0", "-999.9", "9999.9", "99999",
    };

    /// <summary>The cell says that nothing was measured.</summary>
    public static bool IsMissing(string text) => Missing.Contains(text);

    /// <summary>The number in a cell; null when it is none. T is a trace of rain: 0.</summary>
    /// <param name="text">The cell.</param>
    /// <param name="decimalComma">Whether 3,5 is three and a half.</param>
    public static double? Number(string text, bool decimalComma)
    {
        if (text is "T" or "t") return 0;
        var plain = decimalComma ? text.Replace(',', '.') : text;
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }
}
