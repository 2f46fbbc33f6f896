namespace Rickyard.Core.Boxes;

/// <summary>What others need for a kilogram of water taken out of wood: facts to lay beside a run, not limits of it.</summary>
public static class KilnFigures
{
    /// <summary>Nothing but the evaporation, at 60 °C.</summary>
    public static KilnFigure Evaporation { get; } = new("evaporating alone at 60 °C", 0.65, 0.65, "steam tables, 2.358 MJ/kg (from memory)");

    /// <summary>Heated kilns of all kinds.</summary>
    public static KilnFigure Kilns { get; } = new("kilns overall", 1.0, 2.6, "Simpson 1991, Dry Kiln Operator's Manual, ch. 11: 1.5 to 4 times the evaporation");

    /// <summary>A batch kiln for firewood, six cords at a time, its heat alone.</summary>
    public static KilnFigure BatchFirewoodKiln { get; } = new("a batch firewood kiln, its heat", 1.27, 1.27, "computed from a trade cost sheet: 16 million Btu for six cords of green red oak");

    /// <summary>A kiln with a heat pump that condenses the water.</summary>
    public static KilnFigure DehumidifierKiln { get; } = new("a dehumidifier kiln", 0.33, 0.33, "Shang and others 1995, Drying Technology 13:1431-1445 (abstract): 3.08 kg per kWh");

    /// <summary>All of them, dearest first.</summary>
    public static IReadOnlyList<KilnFigure> All { get; } = [Kilns, BatchFirewoodKiln, Evaporation, DehumidifierKiln];
}
