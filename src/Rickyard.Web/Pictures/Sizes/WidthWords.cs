using static System.FormattableString;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>Widths as a person with a ruler says them; inches are rounded down to a quarter, so that they never promise more than the centimetres do.</summary>
public static class WidthWords
{
    private const double MetresPerInch = 0.0254;

    private static readonly string[] Quarters = ["", "¼", "½", "¾"];

    /// <summary>"9 cm".</summary>
    /// <param name="width">[m]</param>
    public static string Centimetres(double width) => Invariant($"{100 * width:0.#}\u00a0cm");

    /// <summary>"3½ in".</summary>
    /// <param name="width">[m]</param>
    public static string Inches(double width)
    {
        var quarters = (int)Math.Floor(4 * width / MetresPerInch + 1e-9);
        var whole = quarters >= 4 ? Invariant($"{quarters / 4}") : "";
        return $"{whole}{Quarters[quarters % 4]}\u00a0in";
    }

    /// <summary>"9 cm (3½ in)".</summary>
    /// <param name="width">[m]</param>
    public static string Both(double width) => $"{Centimetres(width)} ({Inches(width)})";

    /// <summary>"9 in 10", or "95 in 100".</summary>
    /// <param name="share">0 to 1.</param>
    public static string Odds(double share) => Math.Abs(10 * share - Math.Round(10 * share)) < 1e-6 ? Invariant($"{10 * share:0}\u00a0in\u00a010") : Invariant($"{100 * share:0.#}\u00a0in\u00a0100");
}
