using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>A class pulled from a track, and how its rest then goes.</summary>
/// <param name="Class">Its number.</param>
/// <param name="Day">When; null where it never gets to where it was to be pulled. [d]</param>
/// <param name="MassAtLoading">[kg]</param>
/// <param name="Rest">Readings along the rest, the pull itself first.</param>
internal sealed record PulledClass(int Class, double? Day, double MassAtLoading, IReadOnlyList<(double Days, SplitReading Reading)> Rest)
{
    /// <summary>The same after a part of the whole rest, 0 to 1.</summary>
    internal ClassPull Rested(double part)
    {
        var pulled = Rest[0].Reading;
        var (days, end) = Rest[(int)Math.Round(part * (Rest.Count - 1))];
        return new(Class, Day, days, pulled.Mean, pulled.Core, pulled.Shell, pulled.Mass, MassAtLoading, end.Mean, end.Core, end.Shell);
    }
}
