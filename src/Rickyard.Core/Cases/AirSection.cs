namespace Rickyard.Core.Cases;

/// <summary>Reads what the wood meets: one kind of air with "air", or one thing after another with "history".</summary>
internal static class AirSection
{
    /// <summary>What air can be.</summary>
    public static readonly string[] Kinds = ["steady", "stages", "weather", "normals", "box"];

    public static IReadOnlyList<Period> Read(CaseObject root, CaseFindings findings)
    {
        if (root.Has("air") && root.Has("history")) findings.Wrong("air", "Both \"air\" and \"history\" are given.", "Give \"air\" for one kind of air, or \"history\" for one thing after another.");
        if (root.Has("history") && root.Has("rack")) findings.Wrong("rack", "A history describes the rack in each of its rack periods.", "Move cover, sun, wind and rows there.");
        var history = root.Has("history") ? HistorySection.Read(root, findings) : [];
        if (root.Has("air")) return Air(root, findings);
        if (!root.Has("history")) root.Missing("air", $"Give {{ … }} with {CaseObject.Listed(Kinds, "or")}; or give \"history\".");
        return history;
    }

    private static List<Period> Air(CaseObject root, CaseFindings findings)
    {
        if (root.Group("air", Kinds) is not { } air) return [];
        if (air.Keys.Count != 1) findings.Wrong("air", air.Keys.Count == 0 ? "It names no air." : $"It names {CaseObject.Listed([.. air.Keys])} at once.", $"Give one of {CaseObject.Listed(Kinds)}.");
        var periods = Steady(air, findings);
        periods.AddRange(Stages(air, findings));
        periods.AddRange(Outdoors(root, air, findings));
        if (BoxSection.Read(air, findings) is { } box) periods.Add(box);
        return periods;
    }

    private static List<Period> Steady(CaseObject air, CaseFindings findings) =>
        SteadyAir.Read(air.Group("steady", SteadyAir.Keys), null, findings) is { } steady ? [steady] : [];

    private static List<Period> Stages(CaseObject air, CaseFindings findings)
    {
        if (!air.Has("stages")) return [];
        var stages = air.Groups("stages", ["for", .. SteadyAir.Keys]);
        return [.. stages.Select((stage, index) => SteadyAir.Read(stage, PeriodTime.Read(stage, index == stages.Count - 1), findings)).OfType<Period>()];
    }

    private static List<Period> Outdoors(CaseObject root, CaseObject air, CaseFindings findings)
    {
        if (!air.Has("weather") && !air.Has("normals"))
        {
            if (root.Has("rack")) findings.Wrong("rack", "A rack stands outdoors, but the air is not weather.", "Give the air as \"weather\" or \"normals\", or leave the rack out.");
            root.Group("rack", RackSection.Keys);
            return [];
        }

        var rack = RackSection.Read(root.Group("rack", RackSection.Keys), findings);
        return RackSection.Weather(air, findings) is { } weather ? [new RackPeriod(null, weather, rack)] : [];
    }
}
