using System.Text;
using System.Text.Json;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>The text of a case file as JSON, comments and trailing commas allowed.</summary>
internal static class CaseJson
{
    /// <summary>Comments and trailing commas are allowed.</summary>
    public static JsonDocumentOptions Options { get; } = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public static Result<JsonDocument> Parse(string json, string fileName)
    {
        var text = json.TrimStart('\uFEFF');
        if (string.IsNullOrWhiteSpace(text)) return ResultOf.Failure<JsonDocument>(fileName, "The file is empty.", "Write a case in it; docs/case-file.md has examples.");
        try
        {
            return ResultOf.Success(JsonDocument.Parse(text, Options));
        }
        catch (JsonException syntax)
        {
            return ResultOf.Failure<JsonDocument>([At(syntax, text, fileName)]);
        }
    }

    private static Problem At(JsonException syntax, string text, string fileName)
    {
        var line = (int)(syntax.LineNumber ?? 0);
        return new(
            $"{fileName}, line {line + 1}, column {Column(text, line, (int)(syntax.BytePositionInLine ?? 0)) + 1}",
            $"It is not JSON: {Reason(syntax.Message)}",
            "Look there, and just before it, for a missing comma, quotation mark or bracket.");
    }

    // The parser counts bytes of UTF-8; a person counts letters.
    private static int Column(string text, int line, int bytes)
    {
        var lines = text.Split('\n');
        var utf8 = Encoding.UTF8.GetBytes(line < lines.Length ? lines[line] : "");
        return Encoding.UTF8.GetCharCount(utf8, 0, Math.Min(bytes, utf8.Length));
    }

    private static string Reason(string message)
    {
        foreach (var tail in new[] { " LineNumber:", " Change the reader options", " Path:" })
            if (message.IndexOf(tail, StringComparison.Ordinal) is > 0 and var end) message = message[..end];
        return message;
    }
}
