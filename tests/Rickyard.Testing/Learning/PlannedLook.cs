using Rickyard.Core.Measuring;

namespace Rickyard.Testing.Learning;

/// <summary>A look at an invented lot that is yet to be taken.</summary>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Piece">Marked split, or empty for any.</param>
/// <param name="Place">Where pins go, or null.</param>
/// <param name="IsOven">Whether a section is dried.</param>
public sealed record PlannedLook(double Day, string Piece, PinPlace? Place, bool IsOven)
{
    /// <summary>A pin reading.</summary>
    public static PlannedLook Pin(double day, string piece, PinPlace place) => new(day, piece, place, false);

    /// <summary>A weighing.</summary>
    public static PlannedLook Weighing(double day, string piece) => new(day, piece, null, false);

    /// <summary>An oven test of a section.</summary>
    public static PlannedLook Oven(double day, string piece) => new(day, piece, null, true);
}
