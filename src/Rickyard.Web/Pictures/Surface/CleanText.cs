using System.Text;

namespace Rickyard.Web.Pictures.Surface;

internal static class CleanText
{
    /// <summary>The text as XML and fonts take it: halves of characters replaced, control characters left out.</summary>
    public static string Of(string text) => string.Concat(text.EnumerateRunes().Where(IsText));

    private static bool IsText(Rune rune) => !Rune.IsControl(rune) && (rune.Value & 0xfffe) != 0xfffe;
}
