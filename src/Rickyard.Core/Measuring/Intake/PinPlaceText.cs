using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Where pins went in, as people write it: "end grain", "core", "split face, depth 20 mm", "insulated 1 in".</summary>
internal static partial class PinPlaceText
{
    private const string Wanted = "Give \"end grain\", \"side\", \"split face\" or \"core\" (of a face just split), and behind it, where it is not the usual 8 mm, \"depth 12 mm\", or \"insulated 20 mm\" for pins bare at their tips alone.";

    private static readonly TypedQuantity Depth = new(QuantityUnits.Length, 0.001, 0.15, "1 mm to 15 cm", "20 mm");

    private static readonly Dictionary<string, PinPlace> Places = new(StringComparer.OrdinalIgnoreCase)
    {
        ["end grain"] = PinPlace.EndGrain, ["end"] = PinPlace.EndGrain,
        ["side"] = PinPlace.Side, ["bark"] = PinPlace.Side,
        ["split face"] = PinPlace.SplitFace, ["face"] = PinPlace.SplitFace,
        ["core"] = PinPlace.FreshCore, ["fresh core"] = PinPlace.FreshCore, ["freshly split core"] = PinPlace.FreshCore,
    };

    /// <summary>The place, or null with what is wrong told. A depth alone is meant from a split face.</summary>
    public static Pins? Read(GivenReading given, RowFaults faults)
    {
        var text = given[ReadingColumns.Place];
        var match = Shape().Match(text);
        var words = match.Groups["place"].Value;
        var known = Places.TryGetValue(words, out var place);
        if (!known && (words.Length > 0 || !match.Groups["depth"].Success)) return Unknown(text, faults);
        if (!match.Groups["depth"].Success) return new(place);
        if (!Depth.TryRead(match.Groups["depth"].Value, given.FieldOf(ReadingColumns.Place), out var depth, out var problem)) faults.Wrong(problem);
        return problem is null ? new(known ? place : PinPlace.SplitFace, depth, match.Groups["how"].Value.Equals("insulated", StringComparison.OrdinalIgnoreCase)) : null;
    }

    /// <summary>How a table writes it.</summary>
    public static string Written(Pins pins)
    {
        var place = Places.First(pair => pair.Value == pins.Place).Key;
        return pins is { Depth: Pins.UsualDepth, Insulated: false } ? place : string.Create(CultureInfo.InvariantCulture, $"{place}, {(pins.Insulated ? "insulated" : "depth")} {Math.Round(1000 * pins.Depth, 9)} mm");
    }

    /// <summary>How a sentence says it.</summary>
    public static string Spoken(Pins pins) => pins.Place switch
    {
        PinPlace.EndGrain => "on the end grain",
        PinPlace.Side => "on the side",
        PinPlace.SplitFace => "on a split face",
        _ => "in a fresh core",
    } + (pins is { Depth: Pins.UsualDepth, Insulated: false } ? "" : string.Create(CultureInfo.InvariantCulture, $", {(pins.Insulated ? "insulated pins" : "pins")} {1000 * pins.Depth:0.#} mm deep"));

    private static Pins? Unknown(string text, RowFaults faults)
    {
        faults.Wrong(ReadingColumns.Place, text.Length == 0 ? "Where the pins went in is missing." : $"{Echo.Of(text)} is no place for pins that is known.", Wanted);
        return null;
    }

    [GeneratedRegex(@"^(?<place>.*?)[\s,;]*(?:\b(?<how>depth|insulated)(?:\s+(?:at|to|of|depth))?\s+(?<depth>\S.*))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
