using Rickyard.Core.Cases;
using Rickyard.Core.Measuring;
using Rickyard.Core.Weather;

namespace Rickyard.Testing.Learning;

/// <summary>An invented lot on a rack for nine months, and when it is looked at.</summary>
public static class StudyPlan
{
    /// <summary>Days from stacking to the last look. [d]</summary>
    public const double LastLook = 165;

    private const string Text = """
        {
          "name": "Invented red oak on an invented rack",
          "wood": { "species": "northern red oak" },
          "split": { "shape": "wedge", "length": "16 in", "radius": "5 in", "angle": "45°", "bark": true },
          "lot": { "pieces": 220, "size spread": "20 %" },
          "start": { "moisture": "green", "temperature": "8 °C", "at": "2026-03-15" },
          "air": { "normals": { "place": "Des Moines, Iowa" } },
          "rack": { "cover": "top", "sun": "part", "wind": "open", "rows": 2 },
          "run": { "for": "270 days", "report every": "15 days" }
        }
        """;

    /// <summary>The lot.</summary>
    public static DryingCase Case { get; } = CaseReader.Read(Text, "study.json").Value!;

    /// <summary>The climate it stands in.</summary>
    public static IReadOnlyDictionary<WeatherName, WeatherScenario> Weather { get; } = new Dictionary<WeatherName, WeatherScenario>
    {
        [Case.Weather[0]] = WeatherScenario.FromNormals(NormalsCatalogue.Find("Des Moines, Iowa").Value!),
    };

    /// <summary>Ten looks: a marked split weighed three times, pins into ends, faces and cores of others, one section in the oven.</summary>
    public static IReadOnlyList<PlannedLook> Ten { get; } =
    [
        PlannedLook.Weighing(0, "7"), PlannedLook.Pin(60, "", PinPlace.EndGrain), PlannedLook.Pin(60, "", PinPlace.FreshCore), PlannedLook.Weighing(75, "7"),
        PlannedLook.Oven(105, "3"), PlannedLook.Pin(120, "", PinPlace.SplitFace), PlannedLook.Pin(120, "", PinPlace.FreshCore), PlannedLook.Weighing(150, "7"),
        PlannedLook.Pin(LastLook, "", PinPlace.FreshCore), PlannedLook.Pin(LastLook, "", PinPlace.FreshCore),
    ];
}
