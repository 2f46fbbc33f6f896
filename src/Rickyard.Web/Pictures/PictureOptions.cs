namespace Rickyard.Web.Pictures;

/// <summary>How the picture of a run is laid out.</summary>
/// <param name="Dark">On a dark page; the scale of moisture stays the same.</param>
/// <param name="Narrow">For a phone held upright, 390 px wide, everything stacked; otherwise 1200 px wide.</param>
/// <param name="DotsPerPixel">Dots of a PNG for each pixel of the drawing, 0.5 to 4; 2 is sharp on screens and in print.</param>
public sealed record PictureOptions(bool Dark = false, bool Narrow = false, double DotsPerPixel = 2)
{
    /// <summary>Width of the wide layout. [px]</summary>
    public const double WideWidth = 1200;

    /// <summary>Width of the narrow layout. [px]</summary>
    public const double NarrowWidth = 390;

    /// <summary>Width of the drawing. [px]</summary>
    public double Width => Narrow ? NarrowWidth : WideWidth;
}
