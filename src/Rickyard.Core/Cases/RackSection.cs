using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Cases;

/// <summary>Reads a rack and the weather over it.</summary>
internal static class RackSection
{
    public static readonly string[] Keys = ["cover", "sun", "wind", "rows"];

    private static readonly Dictionary<string, RackCover> Covers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["none"] = RackCover.None, ["top"] = RackCover.Top, ["tarp"] = RackCover.Tarp, ["shed"] = RackCover.Shed,
    };

    private static readonly Dictionary<string, RackSun> Suns = new(StringComparer.OrdinalIgnoreCase)
    {
        ["full"] = RackSun.Full, ["part"] = RackSun.Part, ["shade"] = RackSun.Shade,
    };

    private static readonly Dictionary<string, RackWind> Winds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["open"] = RackWind.Open, ["sheltered"] = RackWind.Sheltered,
    };

    /// <summary>The rack; a group left out is a rack of defaults.</summary>
    public static RackDescription Read(CaseObject? rack, CaseFindings findings)
    {
        var usual = new RackDescription();
        foreach (var (key, word) in new[] { ("cover", "top"), ("sun", "part"), ("wind", "open"), ("rows", "1") })
            if (rack?.Has(key) != true) findings.Assume($"The rack's {key} was not given: {word}.");
        return rack is null ? usual : new(
            rack.Choice("cover", Covers) ?? usual.Cover,
            rack.Choice("sun", Suns) ?? usual.Sun,
            rack.Choice("wind", Winds) ?? usual.Wind,
            rack.Count("rows", 1, RackDescription.MostRows) ?? usual.Rows);
    }

    /// <summary>The weather file or the place that a group names under "weather" or "normals".</summary>
    public static WeatherName? Weather(CaseObject from, CaseFindings findings)
    {
        if (from.Has("weather")) return File(from.Group("weather", "file"));
        return Place(from.Group("normals", "place"), findings);
    }

    private static WeatherName? File(CaseObject? weather) =>
        weather?.NeededText("file", "Give the path of a weather file, from the folder of the case file.") is { } file ? new(file, null) : null;

    private static WeatherName? Place(CaseObject? normals, CaseFindings findings)
    {
        if (normals?.NeededText("place", "Give a known place, such as \"Des Moines, Iowa\".") is not { } place) return null;
        foreach (var problem in NormalsCatalogue.Find(place).Problems) findings.Wrong(problem with { Field = normals.PathOf("place") });
        return new(null, place);
    }
}
