using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;

namespace Rickyard.Core.Cases;

/// <summary>Reads the schedule of a box: stages, or one temperature throughout.</summary>
/// <param name="heater">What heats the box.</param>
/// <param name="fan">What moves its air.</param>
/// <param name="vent">The box's own vent.</param>
/// <param name="reason">The user's own words for going above a safety limit, or null.</param>
/// <param name="findings">Where problems go.</param>
internal sealed class StageSection(BoxHeater heater, BoxFan fan, BoxVent vent, string? reason, CaseFindings findings)
{
    private static readonly string[] Keys = ["kind", "for", "temperature", "vent", "humidity"];

    private static readonly Dictionary<string, StageKind> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["drying"] = StageKind.Drying, ["equalizing"] = StageKind.Equalizing, ["closed rest"] = StageKind.ClosedRest, ["open rest"] = StageKind.OpenRest,
    };

    private bool HasVent => vent is { Flow: > 0 } or { Opening: > 0 };

    public IReadOnlyList<BoxStage> Read(CaseObject box)
    {
        if (box.Has("stages") && box.Has("temperature")) findings.Wrong(box.PathOf("temperature"), "Both \"temperature\" and \"stages\" are given.", "Give \"temperature\" for one drying throughout, or \"stages\" each with its own.");
        if (!box.Has("stages")) return [Throughout(box)];
        var stages = box.Groups("stages", Keys);
        return [.. stages.Select((stage, index) => Stage(stage, index == stages.Count - 1))];
    }

    private BoxStage Throughout(CaseObject box)
    {
        if (heater.Power > 0 && !box.Has("temperature")) box.Missing("temperature", $"{BoxLimits.Setting.Wanted} Or give \"stages\".");
        return new(StageKind.Drying, null, Setting(box));
    }

    private BoxStage Stage(CaseObject stage, bool last)
    {
        var kind = stage.Choice("kind", Kinds) ?? StageKind.Drying;
        if (!stage.Has("kind")) findings.Assume("What a stage is for was not given: drying.");
        var rest = kind is StageKind.ClosedRest or StageKind.OpenRest;
        var days = PeriodTime.Read(stage, last && !rest);
        return kind == StageKind.OpenRest ? OpenRest(stage, days) : new(kind, days, Setting(stage), VentOf(stage, kind));
    }

    private BoxStage OpenRest(CaseObject stage, double? days)
    {
        foreach (var key in new[] { "temperature", "vent", "humidity" }.Where(stage.Has))
            findings.Wrong(stage.PathOf(key), "An open rest is out of the box, in the air outside it.", "Leave it out, or make it a \"closed rest\".");
        return new(StageKind.OpenRest, days, null);
    }

    private double? Setting(CaseObject from)
    {
        if (from.Quantity("temperature", BoxLimits.Setting) is not { } celsius) return null;
        if (heater.Power <= 0) findings.Wrong(from.PathOf("temperature"), "The box has no heater that could hold a temperature.", "Give \"heater\": { \"power\": … }, or leave the temperature out.");
        if (SafetyLimits.Refusal(celsius, heater.Band, reason, from.PathOf("temperature")) is { } refusal) findings.Wrong(refusal);
        return celsius;
    }

    private BoxVent? VentOf(CaseObject stage, StageKind kind)
    {
        if (kind == StageKind.ClosedRest) return Closed(stage);
        if (stage.Has("vent") && stage.Has("humidity")) findings.Wrong(stage.PathOf("humidity"), "Both \"vent\" and \"humidity\" are given.", "Give the humidity inside \"vent\", or leave \"vent\" out to steer the box's own by it.");
        if (stage.Has("vent")) return VentSection.Read(stage, fan, findings);
        if (stage.Has("humidity")) return Steered(stage);
        return kind == StageKind.Equalizing ? Equalizing() : null;
    }

    private BoxVent Closed(CaseObject stage)
    {
        foreach (var key in new[] { "vent", "humidity" }.Where(stage.Has))
            findings.Wrong(stage.PathOf(key), "A closed rest is shut tight.", "Leave it out, or make it an \"equalizing\" stage.");
        return BoxVent.Shut;
    }

    private BoxVent Steered(CaseObject stage)
    {
        if (!HasVent) findings.Wrong(stage.PathOf("humidity"), "The box's vent is shut: nothing could open about that humidity.", "Give the box a \"vent\" with \"flow\" or \"opening\", or give the stage its own.");
        return vent with { HumidityLimit = stage.Quantity("humidity", BoxLimits.HumidityLimit) };
    }

    private BoxVent Equalizing()
    {
        if (vent.HumidityLimit is not null) return vent;
        findings.Assume("An equalizing stage has neither \"humidity\" nor \"vent\": the vent is shut, and the wood's own vapour makes the air as humid as it can.");
        return BoxVent.Shut;
    }
}
