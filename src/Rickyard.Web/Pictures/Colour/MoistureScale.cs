namespace Rickyard.Web.Pictures.Colour;

/// <summary>
/// The one scale of moisture, the same in every picture: a place from 0 (oven-dry) to 1 (<see cref="Wettest"/> and above), and a colour for
/// each place, from pale straw to deep blue-green. Lightness falls evenly along the scale, so that it reads in greyscale and to colour-blind eyes.
/// The scale is stretched where a cook decides: the place goes as M^1.5 / (M^1.5 + 0.2^1.5), so that its middle is near 19 % dry basis and a third
/// of it serves 12 to 30 %. Judgement of what is worth telling apart, no source.
/// </summary>
public static class MoistureScale
{
    /// <summary>Moisture at the wet end; anything wetter looks the same. [kg kg⁻¹]</summary>
    public const double Wettest = 1.20;

    private const double Middle = 0.20;
    private const double Steepness = 1.5;
    private const double Driest = 0.955;
    private const double Darkest = 0.32;

    /// <summary>Moistures worth a tick. [kg kg⁻¹]</summary>
    public static IReadOnlyList<double> Ticks { get; } = [0, 0.06, 0.12, 0.20, 0.30, 0.50, 0.80, 1.20];

    /// <summary>Place of a moisture, 0 to 1.</summary>
    /// <param name="moisture">[kg kg⁻¹]</param>
    public static double Place(double moisture) => Math.Min(1, Share(Math.Max(0, moisture)) / Share(Wettest));

    /// <summary>Moisture at a place. [kg kg⁻¹]</summary>
    public static double MoistureAt(double place)
    {
        var share = Math.Clamp(place, 0, 1) * Share(Wettest);
        return Middle * Math.Pow(share / (1 - share), 1 / Steepness);
    }

    /// <summary>Colour of a moisture.</summary>
    public static Rgb Colour(double moisture) => At(Place(moisture)).ToRgb();

    /// <summary>Colour at a place.</summary>
    public static OkLch At(double place) => new(
        Driest + (Darkest - Driest) * place,
        0.040 + 0.075 * Math.Sin(Math.PI * Math.Pow(place, 0.85)) * (1 - 0.25 * place),
        95 + 115 * Math.Pow(place, 1.1));

    private static double Share(double moisture) => 1 / (1 + Math.Pow(Middle / moisture, Steepness));
}
