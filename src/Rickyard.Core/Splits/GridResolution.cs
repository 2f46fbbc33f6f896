namespace Rickyard.Core.Splits;

/// <summary>How finely a split is cut into cells.</summary>
/// <param name="Radial">Cells from pith to bark, or across half a block's width.</param>
/// <param name="Tangential">Cells across half the opening, or half a block's height.</param>
/// <param name="Longitudinal">Cells along half the length.</param>
/// <param name="SkinMetres">Thickness aimed at for the outermost cell under a bare face. [m]</param>
/// <param name="Growth">Largest ratio of neighbouring cells.</param>
public sealed record GridResolution(int Radial, int Tangential, int Longitudinal, double SkinMetres, double Growth)
{
    /// <summary>What forecasts use; the convergence study in docs/physics.md shows what it costs in accuracy.</summary>
    public static GridResolution Default { get; } = new(10, 8, 8, 0.003, 1.6);

    /// <summary>Every cell count multiplied, skin and growth refined to match.</summary>
    public GridResolution Refined(int factor) =>
        new(Radial * factor, Tangential * factor, Longitudinal * factor, SkinMetres / factor, Math.Pow(Growth, 1.0 / factor));
}
