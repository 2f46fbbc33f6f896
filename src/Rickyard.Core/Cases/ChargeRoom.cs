using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Asks whether a charge fits into its box.</summary>
internal static class ChargeRoom
{
    public static void Ask(CaseObject root, IReadOnlyList<(ChargeClass Class, ClassPacking Packing)> classes, CaseFindings findings)
    {
        if (BoxSection.Inside(root) is not { } inside) return;
        foreach (var one in classes.Select(item => item.Class).Where(item => item.Wood.Split.Length > inside.Longest))
            findings.Wrong("charge", Invariant($"The splits of \"{one.Name}\" are {100 * one.Wood.Split.Length:0.#} cm long, the longest edge of the box is {100 * inside.Longest:0.#} cm."), Invariant($"Give splits of at most {100 * inside.Longest:0.#} cm, or a larger \"inside\"."));
        var solid = classes.Sum(one => Solid(one.Class));
        var taken = classes.Sum(one => Solid(one.Class) / one.Packing.SolidShare);
        if (taken <= inside.Volume) return;
        findings.Wrong(
            "charge",
            Invariant($"It is {solid:0.###} m³ of solid wood, {100 * solid / inside.Volume:0} % of the {inside.Volume:0.###} m³ inside the box; as it is packed at most {100 * solid / taken:0} % fits in."),
            Invariant($"Take {100 * (1 - inside.Volume / taken):0} % fewer pieces or more, or pack them \"tight\" (60 % wood; usual 50 %, loose 40 %), or give a larger \"inside\"."));
    }

    private static double Solid(ChargeClass one) => one.Pieces * one.Wood.Split.Volume;
}
