namespace Rickyard.Core.Boxes;

/// <summary>How fresh air is let in: blown (<see cref="Flow"/>) or through an opening that the warmth of the box draws through (<see cref="Opening"/>); both may be 0.</summary>
/// <param name="Flow">Fresh air blown in when fully open, measured outside. [m³ s⁻¹]</param>
/// <param name="Opening">Area when fully open, of the inlet or the outlet, whichever is smaller. [m²]</param>
/// <param name="HumidityLimit">Relative humidity about which it opens, 0 to 1; null: always fully open.</param>
public sealed record BoxVent(double Flow, double Opening, double? HumidityLimit)
{
    /// <summary>Shut.</summary>
    public static BoxVent Shut { get; } = new(0, 0, null);
}
