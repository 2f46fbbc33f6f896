namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>A stretch of a log in which every reading of the coldest core is at or above a temperature and none is missing.</summary>
/// <param name="First">Number of its first reading.</param>
/// <param name="Last">Number of its last reading.</param>
/// <param name="Start">Time of the first. [s]</param>
/// <param name="End">Time of the last. [s]</param>
public sealed record HeatHold(int First, int Last, double Start, double End)
{
    /// <summary>From its first to its last reading; nothing is added for the time before and after. [min]</summary>
    public double Minutes => (End - Start) / 60;
}
