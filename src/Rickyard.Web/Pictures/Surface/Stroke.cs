using Rickyard.Web.Pictures.Colour;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>How a line is drawn.</summary>
/// <param name="Colour">Its colour.</param>
/// <param name="Width">Its width. [px]</param>
/// <param name="Dash">How it is broken.</param>
/// <param name="Blunt">Whether it ends flat where its points end, instead of round.</param>
public readonly record struct Stroke(Rgb Colour, double Width, Dash Dash = Dash.None, bool Blunt = false);
