namespace Rickyard.Core.Weather;

/// <summary>What filling a series did.</summary>
/// <param name="Straight">Hours filled along a straight line.</param>
/// <param name="Neighbours">Hours filled from the same hour of neighbouring days.</param>
/// <param name="OpenFrom">First hour of the first gap that was too long, or -1.</param>
/// <param name="OpenLength">Its length. [h]</param>
internal readonly record struct GapReport(int Straight, int Neighbours, int OpenFrom, int OpenLength)
{
    /// <summary>Nothing is left open.</summary>
    public bool Complete => OpenFrom < 0;
}
