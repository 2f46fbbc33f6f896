using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;

namespace Rickyard.Core.Learning;

/// <summary>What is told beside the draws from a run of the typical split in usual weather.</summary>
/// <param name="Celsius">Its temperature, by report. [°C]</param>
/// <param name="AirEquilibrium">Equilibrium moisture of the air, by report. [kg kg⁻¹]</param>
/// <param name="Notes">Notes of the weather.</param>
internal sealed record TypicalSplit(double[] Celsius, double[] AirEquilibrium, IReadOnlyList<string> Notes)
{
    /// <summary>Run it.</summary>
    internal static TypicalSplit Run(DryingCase drying, CaseAir air, double[] days, CancellationToken cancellation)
    {
        var balance = new double[days.Length];
        SortedSet<string> notes = [];
        var track = new GroupRun(drying, air, days, cancellation).Run(
            [MemberWood.Of(drying, MemberDraw.Typical)], GroupConditions.Typical, notes, (report, _, solver, _) => balance[report] = DryingForecast.Equilibrium(solver.Air))[0];
        if (balance.Length > 1) balance[0] = balance[1];
        return new(track.Celsius, balance, [.. notes]);
    }
}
