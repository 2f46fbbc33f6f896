namespace Rickyard.Core.Splits;

/// <summary>How finely a split is cut into cells.</summary>
/// <param name="Radial">Cells from pith to bark.</param>
/// <param name="Tangential">Cells across half the opening.</param>
/// <param name="Longitudinal">Cells along half the length.</param>
/// <param name="SkinMetres">Thickness aimed at for the outermost cell under a bare face. [m]</param>
/// <param name="Growth">Largest ratio of neighbouring cells.</param>
public sealed record GridResolution(int Radial, int Tangential, int Longitudinal, double SkinMetres, double Growth)
{
    /// <summary>What forecasts use; the convergence study in docs/physics.md, N5, shows what it costs in accuracy.</summary>
    public static GridResolution Default { get; } = new(14, 6, 6, 0.001, 2.2);

    /// <summary>Cells across half a block's width, and across half its height: as many in all as in a wedge.</summary>
    public int Crosswise => Math.Max(1, (int)Math.Round(Math.Sqrt((double)Radial * Tangential)));

    /// <summary>Every cell count multiplied, skin and growth refined to match.</summary>
    public GridResolution Refined(int factor) =>
        new(Radial * factor, Tangential * factor, Longitudinal * factor, SkinMetres / factor, Math.Pow(Growth, 1.0 / factor));
}
