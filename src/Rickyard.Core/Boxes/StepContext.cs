namespace Rickyard.Core.Boxes;

/// <summary>What a step of a box has settled before its heat is closed.</summary>
/// <param name="Before">At its start.</param>
/// <param name="After">Masses at its end; temperatures still those of its start.</param>
/// <param name="Outside">Over the step.</param>
/// <param name="Setting">Of the stage.</param>
/// <param name="Exchange">Through openings and on surfaces.</param>
/// <param name="Kelvins">Temperature of the air as the charge met it. [K]</param>
/// <param name="Rise">By how much air is warmer on the warm shelf than on the cool one. [K]</param>
/// <param name="WallFilm">[W m⁻² K⁻¹]</param>
/// <param name="RadiantPerArea">From the heater on the faces. [W m⁻²]</param>
/// <param name="View">Part of what the faces see that is wall.</param>
/// <param name="VaporHeat">Heat content of the vapour the charge gave off, over the step, dew taken away. [J]</param>
/// <param name="DripOfWood">Dew that runs off the wood. [kg s⁻¹]</param>
/// <param name="Binned">Whether each class is in a closed bin.</param>
internal readonly record struct StepContext(
    BoxAir Before, BoxAir After, Outside Outside, BoxSetting Setting, BoxExchange Exchange, double Kelvins, double Rise, double WallFilm,
    double RadiantPerArea, double View, double VaporHeat, double DripOfWood, bool[] Binned)
{
    internal bool InBin(int body) => Binned[body];

    internal double Warmer(ChargeBody body) => Rise * Position(body.Class.Shelf);

    /// <summary>Half the rise above or below the middle.</summary>
    internal static double Position(ShelfPlace shelf) => shelf switch { ShelfPlace.Warm => 0.5, ShelfPlace.Cool => -0.5, _ => 0 };
}
