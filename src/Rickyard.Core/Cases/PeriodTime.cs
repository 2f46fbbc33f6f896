namespace Rickyard.Core.Cases;

/// <summary>Reads how long a period lasts.</summary>
internal static class PeriodTime
{
    /// <summary>Days; only the last period may leave it out, and lasts to the end of the run.</summary>
    public static double? Read(CaseObject period, bool last) =>
        last ? period.Quantity("for", CaseLimits.PeriodLength) : period.NeededQuantity("for", CaseLimits.PeriodLength);
}
