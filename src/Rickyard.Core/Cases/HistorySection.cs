namespace Rickyard.Core.Cases;

/// <summary>Reads a history: periods of rack, box, room and rest, and splitting again, in their order.</summary>
internal static class HistorySection
{
    private static readonly string[] Kinds = ["rack", "box", "room", "rest", "split again"];

    public static IReadOnlyList<Period> Read(CaseObject root, CaseFindings findings)
    {
        var steps = root.Groups("history", Kinds);
        List<Period> periods = [];
        for (var step = 0; step < steps.Count; step++)
            if (Step(steps[step], step == steps.Count - 1, findings) is { } period) periods.Add(period);
        if (steps.Count > 0 && steps[^1].Has("split again"))
            findings.Wrong($"{steps[^1].Path}.split again", "The history ends with splitting again, which takes no time.", "Say what happens after it: \"rack\", \"box\", \"room\" or \"rest\".");
        return periods;
    }

    private static Period? Step(CaseObject step, bool last, CaseFindings findings)
    {
        if (step.Keys.Count == 1) return Read(step, step.Keys.First(), last, findings);
        var what = step.Keys.Count == 0 ? "It says nothing that is known." : $"It holds {CaseObject.Listed([.. step.Keys])} in one pair of braces.";
        findings.Wrong(step.Path, what, $"Give each step its own {{ }}, with one of {CaseObject.Listed(Kinds)}.");
        return null;
    }

    private static Period? Read(CaseObject step, string kind, bool last, CaseFindings findings) => kind switch
    {
        "rack" => Rack(step.Group(kind, ["for", "weather", "normals", .. RackSection.Keys]), last, findings),
        "rest" => Rest(step.Group(kind, "for", "temperature"), last),
        "split again" => SplitAgain(step.Group(kind, "into")),
        _ => Indoors(step.Group(kind, ["for", .. SteadyAir.Keys]), last, kind == "box", findings),
    };

    private static RackPeriod? Rack(CaseObject? rack, bool last, CaseFindings findings)
    {
        if (rack is null) return null;
        var days = PeriodTime.Read(rack, last);
        if (rack.Has("weather") == rack.Has("normals"))
        {
            findings.Wrong(rack.Path, rack.Has("weather") ? "It names both \"weather\" and \"normals\"." : "It names no weather.", "Give \"weather\": { \"file\": … } or \"normals\": { \"place\": … }.");
            return null;
        }

        var description = RackSection.Read(rack, findings);
        return RackSection.Weather(rack, findings) is { } weather ? new(days, weather, description) : null;
    }

    private static SteadyPeriod? Indoors(CaseObject? air, bool last, bool box, CaseFindings findings)
    {
        if (air is null) return null;
        var days = PeriodTime.Read(air, last);
        return SteadyAir.Read(air, days, findings) is { } steady ? steady with { InBox = box } : null;
    }

    private static RestPeriod? Rest(CaseObject? rest, bool last)
    {
        if (rest is null) return null;
        var days = PeriodTime.Read(rest, last);
        return rest.NeededQuantity("temperature", CaseLimits.AirTemperature) is { } celsius ? new(days, celsius) : null;
    }

    private static SplitAgainPeriod? SplitAgain(CaseObject? split)
    {
        if (split?.Has("into") == false) split.Missing("into", "Give the number of pieces, 2 to 8.");
        return split?.Count("into", 2, 8) is { } into ? new(into) : null;
    }
}
