using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads a hot box that is reckoned with its own balances.</summary>
internal static class BoxSection
{
    /// <summary>Gaps for the area of the walls; judgement: a door that closes, no draught strip. [m² m⁻²]</summary>
    private const double UsualLeaks = 2e-4;

    private const int FewestWords = 3;

    // Stands in for a room that was not understood, so that all else can be read; the case is refused anyway.
    private static readonly BoxInside NotUnderstood = new(10, 10, 10);

    private static readonly string[] Keys =
        ["inside", "walls", "heater", "fan", "vent", "leaks", "ambient", "dehumidifier", "sun", "stages", "temperature", "tariff", "override"];

    /// <summary>The period, or null where there is no box.</summary>
    public static BoxPeriod? Read(CaseObject air, CaseFindings findings)
    {
        if (air.Group("box", Keys) is not { } box) return null;
        var inside = BoxInside.Read(box) ?? NotUnderstood;
        var ambient = AmbientSection.Read(box, findings);
        var description = Describe(box, inside, ambient, findings);
        var reason = Override(box, findings);
        return new(null, new()
        {
            Box = description,
            Ambient = ambient,
            Stages = new StageSection(description.Heater, description.Fan, description.Vent, reason, findings).Read(box),
            Price = TariffSection.Read(box, findings),
            Override = reason,
        });
    }

    /// <summary>The room inside the box of a case, or null where it was not understood.</summary>
    public static BoxInside? Inside(CaseObject root) => root.Group("air", AirSection.Kinds)?.Group("box", Keys) is { } box ? BoxInside.Read(box) : null;

    private static BoxDescription Describe(CaseObject box, BoxInside inside, BoxAmbient ambient, CaseFindings findings)
    {
        var walls = BoxWalls.Read(box, findings);
        var heater = HeaterSection.Read(box, findings);
        var fan = FanSection.Read(box, inside, findings);
        var sun = GlazingSection.Read(box, inside, ambient, findings);
        return new()
        {
            Volume = inside.Volume,
            WallArea = inside.Surface - (sun?.Area ?? 0),
            Height = inside.Height,
            WallConductance = walls.Conductance,
            WallHeatCapacity = walls.HeatCapacity,
            Heater = heater,
            Fan = fan,
            Vent = Vent(box, fan, findings),
            LeakOpening = Leaks(box, inside, findings),
            Dehumidifier = DehumidifierSection.Read(box, findings),
            Sun = sun,
        };
    }

    private static BoxVent Vent(CaseObject box, BoxFan fan, CaseFindings findings)
    {
        if (!box.Has("vent")) findings.Assume("No vent was given: it is shut, and only leaks change the air.");
        return VentSection.Read(box, fan, findings);
    }

    private static double Leaks(CaseObject box, BoxInside inside, CaseFindings findings)
    {
        var usual = UsualLeaks * inside.Surface;
        if (!box.Has("leaks")) findings.Assume(Invariant($"The leaks of the box were not given: {1e4 * usual:0.#} cm² in all, 2 cm² for each m² of wall (judgement)."));
        return box.Group("leaks", "opening")?.NeededQuantity("opening", BoxLimits.Opening) ?? usual;
    }

    private static string? Override(CaseObject box, CaseFindings findings)
    {
        const string Wanted = "Say in words of your own why you go above a safety limit and who watches; it is shown on everything printed.";
        if (box.Text("override", Wanted) is not { } reason) return null;
        if (reason.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length < FewestWords) findings.Wrong(box.PathOf("override"), $"{Quantities.Echo.Of(reason)} says too little.", Wanted);
        return reason;
    }
}
