using System.Text.Json.Nodes;
using Rickyard.Core.Cases;

namespace Rickyard.Testing.Cases;

/// <summary>A case file that is right, to be changed in one place.</summary>
public static class SampleCase
{
    /// <summary>Its text.</summary>
    public const string Text = """
        {
          "name": "Oak by the barn",
          "wood": { "species": "northern red oak" },
          "split": { "shape": "wedge", "length": "16 in", "radius": "6 in", "angle": "60°", "bark": true },
          "lot": { "pieces": 60, "size spread": "20 %" },
          "start": { "moisture": "68 % dry basis", "temperature": "15 °C", "at": "2024-04-01" },
          "air": { "steady": { "temperature": "25 °C", "humidity": "30 %", "speed": "0.2 m/s" } },
          "run": { "for": "37 days", "report every": "1 day" }
        }
        """;

    /// <summary>Its text after a change.</summary>
    /// <param name="path">Keys from the top, with dots; an empty path is the whole file.</param>
    /// <param name="json">The new value as JSON, or null to leave the key out.</param>
    public static string With(string path, string? json) => Change(Text, path, json);

    /// <summary>A text of a case after a change; a number among the keys is a place in a list.</summary>
    public static string Change(string text, string path, string? json)
    {
        var root = JsonNode.Parse(text)!.AsObject();
        var keys = path.Split('.');
        var group = keys.SkipLast(1).Aggregate((JsonNode)root, (at, key) => (int.TryParse(key, out var place) ? at[place] : at[key])!).AsObject();
        if (json is null) group.Remove(keys[^1]);
        else group[keys[^1]] = JsonNode.Parse(json);
        return root.ToJsonString();
    }

    /// <summary>The case as read; it must have no problems.</summary>
    public static DryingCase Read(string text) => CaseReader.Read(text, "sample.json") is { Value: { } drying }
        ? drying
        : throw new InvalidOperationException(string.Join(Environment.NewLine, CaseReader.Read(text, "sample.json").Problems));
}
