namespace Rickyard.Web.Pictures.Surface;

/// <summary>Room that text takes, by the embedded faces and by the widest of the common system fonts, in which an SVG may be read.</summary>
public static class TextMeasure
{
    // DejaVu Sans beside Roboto: 1.12 to 1.19 over sentences and labels of the picture, bold 1.24 to 1.29; a bare number somewhat more.
    private const double RegularSlack = 1.20;
    private const double BoldSlack = 1.28;

    /// <summary>Width in the embedded faces. [px]</summary>
    public static double Width(string text, double size, bool bold = false)
    {
        using var font = Typefaces.Font(size, bold);
        return font.MeasureText(text);
    }

    /// <summary>Width in the widest of the common system fonts. [px]</summary>
    public static double Room(string text, double size, bool bold = false) => Width(text, size, bold) * (bold ? BoldSlack : RegularSlack);

    /// <summary>The text, cleaned, in lines that fit a width in any common font; a longer word is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double size, bool bold = false)
    {
        var lines = new List<string>();
        foreach (var word in CleanText.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width, size, bold)))
        {
            if (lines.Count > 0 && Room($"{lines[^1]} {word}", size, bold) <= width) lines[^1] += " " + word;
            else lines.Add(word);
        }

        return lines;
    }

    private static IEnumerable<string> Pieces(string word, double width, double size, bool bold)
    {
        while (Room(word, size, bold) > width && word.Length > 1)
        {
            var length = word.Length - 1;
            while (length > 1 && Room(word[..length], size, bold) > width) length--;
            if (char.IsHighSurrogate(word[length - 1])) length++;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }
}
