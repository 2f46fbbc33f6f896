namespace Rickyard.Web.Pictures.Chart;

/// <summary>A tick of the calendar axis.</summary>
/// <param name="Day">From the start. [d]</param>
/// <param name="Label">Day or month.</param>
/// <param name="Year">Year, where it is worth saying.</param>
internal sealed record TimeTick(double Day, string Label, string? Year);
