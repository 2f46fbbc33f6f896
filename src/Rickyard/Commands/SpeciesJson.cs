using System.Text.Json;
using Rickyard.Core.Wood;

namespace Rickyard.Commands;

/// <summary>Woods as JSON: every value with its mark and source.</summary>
internal static class SpeciesJson
{
    public static string One(Species species) => JsonText.Object(json => Members(json, species));

    public static string All() => JsonText.Object(json =>
    {
        json.WriteStartArray("species");
        foreach (var species in SpeciesCatalogue.All)
        {
            json.WriteStartObject();
            Members(json, species);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void Members(Utf8JsonWriter json, Species species)
    {
        json.WriteString("name", species.CommonName);
        json.WriteString("latin_name", species.LatinName);
        Texts(json, "aliases", species.Aliases);
        Texts(json, "stands_in", species.StandsIn);
        json.WriteStartObject("values");
        foreach (var line in SpeciesSheet.Of(species))
        {
            json.WriteStartObject(line.Key);
            if (line.Number is null) json.WriteString("value", line.Unit);
            else json.Number("value", line.Number, line.Decimals + 2);
            json.WriteString("mark", line.Mark);
            json.WriteString("source", line.Source);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteString("notes", species.Notes);
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
