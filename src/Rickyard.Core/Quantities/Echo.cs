namespace Rickyard.Core.Quantities;

/// <summary>What a person gave, quoted back in a message: on one line, and short.</summary>
public static class Echo
{
    private const int Longest = 60;

    /// <summary>The text in quotation marks; control characters become spaces and a long text is cut.</summary>
    public static string Of(string text)
    {
        var line = string.Concat(text.Select(letter => char.IsControl(letter) ? ' ' : letter)).Trim();
        return line.Length <= Longest ? $"\"{line}\"" : $"\"{line[..Longest]}…\"";
    }
}
