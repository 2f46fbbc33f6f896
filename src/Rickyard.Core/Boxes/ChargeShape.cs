using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Boxes;

/// <summary>The typical split of a class made ready to be solved: shared by all runs of it, changed by none.</summary>
/// <param name="Class">The class.</param>
/// <param name="Grid">Its grid.</param>
/// <param name="Probes">Where it is read.</param>
/// <param name="Wood">What its wood has of its own.</param>
/// <param name="Table">Diffusivities.</param>
/// <param name="Start">Moisture of every cell at loading. [kg kg⁻¹]</param>
internal sealed record ChargeShape(ChargeClass Class, SplitGrid Grid, SplitProbes Probes, LaneWood Wood, MobilityTable Table, double[] Start)
{
    internal static ChargeShape Of(ChargeClass charged, GridResolution resolution)
    {
        var member = MemberWood.Of(charged.Wood, MemberDraw.Typical);
        var grid = SplitGrid.For(member.Split, resolution);
        var table = MobilityTable.Of(new(charged.Wood.BasicDensity, WaterMobility.FreeWaterOf(charged.Wood.Species.Anatomy)));
        return new(charged, grid, SplitProbes.Of(grid), member.Wood, table, StartField.Of(charged.Wood.Start, grid));
    }

    /// <summary>Read the split at a state of its cells.</summary>
    /// <param name="state">Moisture of every cell. [kg kg⁻¹]</param>
    /// <param name="celsius">Its temperature. [°C]</param>
    internal SplitReading Read(ReadOnlySpan<double> state, double celsius)
    {
        var mean = SplitProbes.Read(Probes.Mean, state, 0, 1);
        return new(
            mean, SplitProbes.Read(Probes.Core, state, 0, 1), SplitProbes.Read(Probes.Shell, state, 0, 1), SplitProbes.Read(Probes.End, state, 0, 1), celsius,
            Mass(mean), 0);
    }

    /// <summary>Mass of the split at a mean moisture. [kg]</summary>
    internal double Mass(double mean) => Grid.Split.Volume * Wood.BasicDensity * (1 + mean);
}
