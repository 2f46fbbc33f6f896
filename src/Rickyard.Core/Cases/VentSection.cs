using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads a vent: shut, blown, or an opening; always open or about a humidity.</summary>
internal static class VentSection
{
    private const string Wanted = "Give \"shut\", or { } with \"flow\" (blown in) or \"opening\" (drawn by warmth), and with \"humidity\" where it opens about one.";

    /// <summary>The vent that a group has under "vent"; shut where that is wrong.</summary>
    public static BoxVent Read(CaseObject from, BoxFan fan, CaseFindings findings)
    {
        if (!from.IsGroup("vent")) return Shut(from, findings);
        var vent = from.Group("vent", "flow", "opening", "humidity")!;
        if (vent.Has("flow") == vent.Has("opening")) findings.Wrong(vent.Path, vent.Has("flow") ? "It has both \"flow\" and \"opening\"." : "It has neither \"flow\" nor \"opening\".", Wanted);
        var read = new BoxVent(vent.Quantity("flow", BoxLimits.VentFlow) ?? 0, vent.Quantity("opening", BoxLimits.Opening) ?? 0, vent.Quantity("humidity", BoxLimits.HumidityLimit));
        if (read.Flow > fan.Flow) findings.Wrong(vent.PathOf("flow"), Invariant($"It blows in {3600 * read.Flow:0.#} m³/h, more than the {3600 * fan.Flow:0.#} m³/h that are carried round in the box."), Invariant($"Give 0 to {3600 * fan.Flow:0.#} m3/h, or a \"fan\" whose \"flow\" is larger."));
        return read;
    }

    private static BoxVent Shut(CaseObject from, CaseFindings findings)
    {
        if (from.Text("vent", Wanted) is { } word && !word.Equals("shut", StringComparison.OrdinalIgnoreCase))
            findings.Wrong(from.PathOf("vent"), $"{Quantities.Echo.Of(word)} is not known.", Wanted);
        return BoxVent.Shut;
    }
}
