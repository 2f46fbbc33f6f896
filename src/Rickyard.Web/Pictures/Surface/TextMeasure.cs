namespace Rickyard.Web.Pictures.Surface;

/// <summary>Room that text takes, by the embedded faces; an SVG in the reader's own font may need up to <see cref="Slack"/> times as much.</summary>
public static class TextMeasure
{
    /// <summary>How much wider a common system font may run than the embedded ones (DejaVu Sans, about the widest, by comparing both).</summary>
    public const double Slack = 1.17;

    /// <summary>Width. [px]</summary>
    public static double Width(string text, double size, bool bold = false)
    {
        using var font = Typefaces.Font(size, bold);
        return font.MeasureText(text);
    }

    /// <summary>The text in lines that fit a width in any common font; a longer word is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, double size, bool bold = false)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width, size, bold)))
        {
            if (lines.Count > 0 && Width($"{lines[^1]} {word}", size, bold) * Slack <= width) lines[^1] += " " + word;
            else lines.Add(word);
        }

        return lines;
    }

    private static IEnumerable<string> Pieces(string word, double width, double size, bool bold)
    {
        while (Width(word, size, bold) * Slack > width && word.Length > 1)
        {
            var length = word.Length - 1;
            while (length > 1 && Width(word[..length], size, bold) * Slack > width) length--;
            yield return word[..length];
            word = word[length..];
        }

        yield return word;
    }
}
