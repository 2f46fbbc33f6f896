namespace Rickyard.Core.Splits;

/// <summary>A face between a cell and the air.</summary>
/// <param name="Cell">Number of the cell behind it.</param>
/// <param name="Kind">What covers it.</param>
/// <param name="Normal">Axis it looks along.</param>
/// <param name="Area">[m²]</param>
/// <param name="Depth">Distance from the face to the middle of the cell, as the grid reckons it. [m]</param>
public readonly record struct OuterFace(int Cell, FaceKind Kind, Axis Normal, double Area, double Depth);
