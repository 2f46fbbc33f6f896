using Rickyard.Core.Tables;

namespace Rickyard.Core.Verification;

/// <summary>The measured cases that come with the program (Data/measured_cases.csv names every source).</summary>
public static class MeasuredCases
{
    /// <summary>All, in the order of the table.</summary>
    public static IReadOnlyList<MeasuredCase> All { get; } = [.. DataRow.Read("Verification/measured_cases").Select(MeasuredCase.Of)];
}
