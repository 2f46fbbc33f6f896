using Rickyard.Web.Pictures.Colour;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>How a text is set, on its base line.</summary>
/// <param name="Size">Height of the type. [px]</param>
/// <param name="Colour">Its colour.</param>
/// <param name="Bold">Whether it is bold.</param>
/// <param name="Anchor">Which part stands at the point.</param>
public readonly record struct TextStyle(double Size, Rgb Colour, bool Bold = false, Anchor Anchor = Anchor.Start);
