using System.Collections.Concurrent;

namespace Rickyard.Core.Drying;

/// <summary>
/// <see cref="WaterMobility"/> of one wood, tabulated over temperature (every kelvin) and moisture, so that a step costs no exponentials
/// whatever the formulas are. Shared by all members of that wood; immutable.
/// </summary>
public sealed class MobilityTable
{
    private const int Coldest = -40, Hottest = 110;
    private static readonly ConcurrentDictionary<WaterMobility, MobilityTable> Known = new();
    private readonly double[][] _across, _along, _free;

    private MobilityTable(WaterMobility mobility)
    {
        Mobility = mobility;
        _across = Rows(mobility.BoundAcross);
        _along = Rows(mobility.BoundAlong);
        _free = Rows(mobility.FreeAcross);
    }

    /// <summary>What it tabulates.</summary>
    public WaterMobility Mobility { get; }

    /// <summary>The table of a wood, made once.</summary>
    public static MobilityTable Of(WaterMobility mobility) => Known.GetOrAdd(mobility, static m => new(m));

    /// <summary>Blend the rows next to a temperature into one lane's row of potentials and diffusivities.</summary>
    /// <param name="celsius">Wood temperature; held at the ends of -40 to 110. [°C]</param>
    /// <param name="bound">Factor on bound water.</param>
    /// <param name="free">Factor on free water.</param>
    /// <param name="row">Written.</param>
    internal void Blend(double celsius, double bound, double free, MobilityRow row)
    {
        var position = Math.Clamp(celsius - Coldest, 0, Hottest - Coldest - 1e-9);
        var line = (int)position;
        double upper = position - line, lower = 1 - upper;
        double[] a0 = _across[line], a1 = _across[line + 1], l0 = _along[line], l1 = _along[line + 1], f0 = _free[line], f1 = _free[line + 1];
        double[] acrossRow = row.Across, alongRow = row.Along;
        double potentialAcross = 0, potentialAlong = 0, before = 0, acrossBefore = 0, alongBefore = 0;
        for (var node = 0; node < MobilityNodes.Count; node++)
        {
            var capillary = free * (lower * f0[node] + upper * f1[node]);
            var across = bound * (lower * a0[node] + upper * a1[node]) + capillary;
            var along = bound * (lower * l0[node] + upper * l1[node]) + WaterMobility.FreeWaterAlongOverAcross * capillary;
            var moisture = MobilityNodes.Moisture(node);
            potentialAcross += (moisture - before) * 0.5 * (across + acrossBefore);
            potentialAlong += (moisture - before) * 0.5 * (along + alongBefore);
            (before, acrossBefore, alongBefore) = (moisture, across, along);
            (acrossRow[2 * node], acrossRow[2 * node + 1], alongRow[2 * node], alongRow[2 * node + 1]) = (potentialAcross, across, potentialAlong, along);
        }
    }

    private static double[][] Rows(Func<double, double, double> formula) => [.. Enumerable.Range(Coldest, Hottest - Coldest + 1)
        .Select(celsius => Enumerable.Range(0, MobilityNodes.Count).Select(node => formula(MobilityNodes.Moisture(node), celsius)).ToArray())];
}
