using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>How long a run is and how often it reports; null where a problem kept it from being understood.</summary>
/// <param name="Days">Length. [d]</param>
/// <param name="ReportEvery">Time between reports. [d]</param>
internal sealed record RunSection(double? Days, double ReportEvery)
{
    private const int MostReports = 50_000;
    private const double UsualReport = 1;

    public static RunSection Read(CaseObject root, IReadOnlyList<Period> periods, CaseFindings findings)
    {
        var lengths = periods.SelectMany(Lengths).ToList();
        double? planned = lengths.Count > 0 && lengths.All(days => days is not null) ? lengths.Sum() : null;
        var run = planned is null ? root.NeededGroup("run", "for", "report every") : root.Group("run", "for", "report every");
        var days = LengthOf(run, planned, findings);
        var every = run?.QuantityOr("report every", CaseLimits.ReportEvery, UsualReport, ReportAssumption) ?? Daily(findings);
        if (days is null) return new(null, every);
        Compare(days.Value, lengths, findings);
        if (run?.Has("report every") != true) every = Math.Min(every, days.Value);
        else Check(run, days.Value, every, findings);
        return new(days, every);
    }

    private const string ReportAssumption = "How often to report was not given: once a day.";

    private static double Daily(CaseFindings findings)
    {
        findings.Assume(ReportAssumption);
        return UsualReport;
    }

    private static double? LengthOf(CaseObject? run, double? planned, CaseFindings findings)
    {
        if (run?.Has("for") == true) return run.Quantity("for", CaseLimits.RunLength);
        if (planned is null) run?.NeededQuantity("for", CaseLimits.RunLength);
        else findings.Assume(Invariant($"The length of the run was not given: all periods, {planned:0.##} days."));
        return planned;
    }

    private static void Check(CaseObject run, double days, double every, CaseFindings findings)
    {
        if (every > days) findings.Wrong(run.PathOf("report every"), Invariant($"Reports every {every:0.##} days do not fit into a run of {days:0.##} days."), "Give a time not above \"for\".");
        if (days / every > MostReports) findings.Wrong(run.PathOf("report every"), Invariant($"This makes {days / every:0} reports."), $"Give a longer time: at most {MostReports} reports can be kept.");
    }

    // A box has its lengths in its stages.
    private static IEnumerable<double?> Lengths(Period period) => period is BoxPeriod box ? box.Plan.Stages.Select(stage => stage.Days) : [period.Days];

    private static void Compare(double days, IReadOnlyList<double?> lengths, CaseFindings findings)
    {
        var planned = lengths.Sum(length => length ?? 0);
        if (planned > days + 1e-6) findings.Assume(Invariant($"The periods last {planned:0.##} days, the run {days:0.##}: what comes after is not run."));
        else if (planned < days - 1e-6 && lengths is [.., not null]) findings.Assume(Invariant($"The periods last {planned:0.##} days, the run {days:0.##}: the last one goes on to the end."));
    }
}
