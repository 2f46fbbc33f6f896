using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Rickyard.Commands;

/// <summary>JSON for machines: UTF-8 letters as they are, no number that JSON cannot hold.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One JSON object.</summary>
    /// <param name="write">Writes its members.</param>
    public static string Object(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <summary>A member that is a number rounded to some decimals, or null where there is none.</summary>
    public static void Number(this Utf8JsonWriter json, string name, double? value, int decimals)
    {
        json.WritePropertyName(name);
        json.Number(value, decimals);
    }

    /// <summary>A number rounded to some decimals, or null where there is none.</summary>
    public static void Number(this Utf8JsonWriter json, double? value, int decimals)
    {
        if (value is { } number && double.IsFinite(number)) json.WriteNumberValue(Math.Round(number, decimals));
        else json.WriteNullValue();
    }
}
