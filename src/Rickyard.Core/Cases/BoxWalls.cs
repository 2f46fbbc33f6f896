namespace Rickyard.Core.Cases;

/// <summary>
/// What walls pass and store, by their kind or by figures. The conductance of a kind is 1/(layers + 1/8): the layers by their conductivity
/// (plywood 0.12, insulation 0.04, brick 0.7 W/mK; handbook values, from memory) and 8 W/m²K from the outer face to still air; framing,
/// door and worn seals are allowed for by judgement. Heat capacity: the inner sheet with shelves, or the inner half of thick walls (judgement).
/// </summary>
/// <param name="Conductance">From the inside face to the air outside. [W m⁻² K⁻¹]</param>
/// <param name="HeatCapacity">[J m⁻² K⁻¹]</param>
internal readonly record struct BoxWalls(double Conductance, double HeatCapacity)
{
    private const double UsualHeatCapacity = 12_000;

    private static readonly Dictionary<string, BoxWalls> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        // One sheet: its outer face alone resists.
        ["thin metal"] = new(8, 8_000),

        // 25 mm of insulation between sheets would pass 1.3.
        ["insulated cabinet"] = new(1.6, 8_000),

        // 18 mm of plywood.
        ["plywood"] = new(3.6, 12_000),

        // 50 mm of insulation between sheets of 12 mm would pass 0.6.
        ["insulated plywood"] = new(0.8, 12_000),

        // 200 mm of brick; half of it is warmed through.
        ["masonry"] = new(2.4, 150_000),
    };

    public static BoxWalls Read(CaseObject box, CaseFindings findings)
    {
        if (!box.Has("walls")) box.Missing("walls", Wanted);
        return box.IsGroup("walls") ? Figures(box.Group("walls", "conductance", "heat capacity")!) : Kind(box, findings);
        BoxWalls Figures(CaseObject walls) => new(
            walls.NeededQuantity("conductance", BoxLimits.Conductance) ?? 1,
            walls.QuantityOr("heat capacity", BoxLimits.HeatCapacity, UsualHeatCapacity, "The heat capacity of the box's walls was not given: 12 kJ/m²K, about 18 mm of wood (judgement)."));
    }

    private static string Wanted => $"Give {CaseObject.Listed([.. Kinds.Keys], "or")}, or {{ \"conductance\": \"1.2 W/m2K\" }}.";

    private static BoxWalls Kind(CaseObject box, CaseFindings findings)
    {
        if (box.Choice("walls", Kinds) is not { } walls) return new(1, UsualHeatCapacity);
        findings.Assume(FormattableString.Invariant($"Walls of that kind (\"{box.Text("walls", Wanted)}\") pass {walls.Conductance:0.#} W/m²K and store {walls.HeatCapacity / 1000:0} kJ/m²K (judgement from usual layers)."));
        return walls;
    }
}
