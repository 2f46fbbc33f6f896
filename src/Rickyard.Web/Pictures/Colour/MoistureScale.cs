namespace Rickyard.Web.Pictures.Colour;

/// <summary>
/// The one scale of moisture, the same in every picture: a place from 0 (oven-dry) to 1 (<see cref="Wettest"/> and above), and a colour for
/// each place, from pale straw to deep blue-green. Lightness falls evenly along the scale, so that it reads in greyscale and to colour-blind eyes.
/// The scale is stretched at the dry end, where a cook decides: the place is ln(1 + M/0.12), so that half of it lies below about 28 % dry basis.
/// </summary>
public static class MoistureScale
{
    /// <summary>Moisture at the wet end; anything wetter looks the same. [kg kg⁻¹]</summary>
    public const double Wettest = 1.20;

    private const double Stretch = 0.12;
    private const double Driest = 0.955;
    private const double Darkest = 0.29;

    /// <summary>Moistures worth a tick. [kg kg⁻¹]</summary>
    public static IReadOnlyList<double> Ticks { get; } = [0, 0.06, 0.12, 0.20, 0.30, 0.50, 0.80, 1.20];

    /// <summary>Place of a moisture, 0 to 1.</summary>
    /// <param name="moisture">[kg kg⁻¹]</param>
    public static double Place(double moisture) =>
        Math.Clamp(Math.Log(1 + Math.Max(0, moisture) / Stretch) / Math.Log(1 + Wettest / Stretch), 0, 1);

    /// <summary>Moisture at a place. [kg kg⁻¹]</summary>
    public static double MoistureAt(double place) => Stretch * (Math.Pow(1 + Wettest / Stretch, Math.Clamp(place, 0, 1)) - 1);

    /// <summary>Colour of a moisture.</summary>
    public static Rgb Colour(double moisture) => At(Place(moisture)).ToRgb();

    /// <summary>Colour at a place.</summary>
    public static OkLch At(double place) => new(
        Driest + (Darkest - Driest) * place,
        0.040 + 0.075 * Math.Sin(Math.PI * Math.Pow(place, 0.85)) * (1 - 0.25 * place),
        95 + 115 * Math.Pow(place, 1.1));
}
