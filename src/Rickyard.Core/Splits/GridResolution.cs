namespace Rickyard.Core.Splits;

/// <summary>How finely a split is cut into cells.</summary>
/// <param name="Radial">Cells from pith to bark; in a block, across half its width and across half its height.</param>
/// <param name="Tangential">Cells across half the opening.</param>
/// <param name="Longitudinal">Cells along half the length.</param>
/// <param name="SkinMetres">Thickness aimed at for the outermost cell under a bare face. [m]</param>
/// <param name="Growth">Largest ratio of neighbouring cells.</param>
public sealed record GridResolution(int Radial, int Tangential, int Longitudinal, double SkinMetres, double Growth)
{
    /// <summary>
    /// What forecasts use; the convergence study in docs/physics.md, N5, shows what it costs in accuracy. Coarse enough to be fast, fine enough to meet Crank's
    /// and Newman's solutions within 0.003 of the initial excess from Fo 0.05 on, in pieces of 30 to 150 mm.
    /// </summary>
    public static GridResolution Default { get; } = new(10, 7, 8, 0.0014, 2.2);

    /// <summary>Every cell count multiplied, skin and growth refined to match.</summary>
    public GridResolution Refined(int factor) =>
        new(Radial * factor, Tangential * factor, Longitudinal * factor, SkinMetres / factor, Math.Pow(Growth, 1.0 / factor));
}
