namespace Rickyard.Core.Cases;

/// <summary>How close together splits lie.</summary>
/// <param name="ExposedShare">Part of the faces that air reaches; judgement. [–]</param>
/// <param name="SolidShare">
/// The most solid wood in a room packed so. A cord of 128 cubic feet holds 70 to 90 of wood and bark, 55 to 70 % (California Energy
/// Commission's firewood table, quoted), short pieces tipped loose about 50 % (state forest conversion table, Lower Saxony); less a tenth of
/// the room for heater, fan and the way of the air (judgement). [–]
/// </param>
internal readonly record struct ClassPacking(double ExposedShare, double SolidShare)
{
    /// <summary>A finger's breadth or more about each.</summary>
    public static ClassPacking Loose { get; } = new(1, 0.40);

    /// <summary>Criss-cross or on racks, touching here and there.</summary>
    public static ClassPacking Usual { get; } = new(0.8, 0.50);

    /// <summary>As in a neat stack.</summary>
    public static ClassPacking Tight { get; } = new(0.5, 0.60);
}
