using Rickyard.Core.Boxes.Changes;

namespace Rickyard.Core.Boxes;

/// <summary>What the box did over a run, and each class in it.</summary>
/// <param name="Plan">The box and its stages as run.</param>
/// <param name="Series">The box through time.</param>
/// <param name="Use">Where the energy went.</param>
/// <param name="Limits">What held it back, stage by stage, in order of time.</param>
/// <param name="Classes">The classes, in the order of the charge.</param>
/// <param name="DripKilograms">Water that condensed on walls or wood and dripped off. [kg]</param>
public sealed record ChargeRun(
    BoxPlan Plan, BoxSeries Series, EnergyUse Use, IReadOnlyList<StageLimit> Limits, IReadOnlyList<ClassRun> Classes, double DripKilograms)
{
    /// <summary>What single changes would win, best first; empty where nothing dries.</summary>
    public IReadOnlyList<ChangeGain> Changes { get; init; } = [];
}
