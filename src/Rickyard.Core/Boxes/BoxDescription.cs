namespace Rickyard.Core.Boxes;

/// <summary>An enclosure in which splits are dried: its size, its walls, and all that heats, moves or changes the air in it (physics.md, section B).</summary>
public sealed record BoxDescription
{
    /// <summary>Inside, empty. [m³]</summary>
    public required double Volume { get; init; }

    /// <summary>Walls, floor and lid together, glazing left out. [m²]</summary>
    public required double WallArea { get; init; }

    /// <summary>Height between its lowest and highest opening, which drives air through leaks and a plain vent. [m]</summary>
    public required double Height { get; init; }

    /// <summary>Heat that passes the walls from inside face to the air outside. [W m⁻² K⁻¹]</summary>
    public required double WallConductance { get; init; }

    /// <summary>Heat that the inner part of the walls and all fittings take up. [J m⁻² K⁻¹]</summary>
    public required double WallHeatCapacity { get; init; }

    /// <summary>What heats it.</summary>
    public required BoxHeater Heater { get; init; }

    /// <summary>What moves its air.</summary>
    public required BoxFan Fan { get; init; }

    /// <summary>How fresh air comes in on purpose.</summary>
    public required BoxVent Vent { get; init; }

    /// <summary>All gaps together, half of them low and half of them high. [m²]</summary>
    public required double LeakOpening { get; init; }

    /// <summary>A machine that takes water out of the air, or null.</summary>
    public BoxDehumidifier? Dehumidifier { get; init; }

    /// <summary>Glazing that lets the sun heat the box, or null.</summary>
    public BoxSun? Sun { get; init; }
}
