using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;

namespace Rickyard.HotBox;

/// <summary>One class of a charge seen as a run of its own, so that it is told like any other.</summary>
internal static class ClassView
{
    public static DryingRun Of(DryingRun run, ClassRun one) => run with
    {
        Case = one.Class.Wood,
        Typical = one.Typical,
        LowTenth = one.LowTenth,
        Median = one.Median,
        HighTenth = one.HighTenth,
        Window = one.Window,
    };
}
