using Rickyard.Core.Cases;

namespace Rickyard.Core.Boxes;

/// <summary>Splits of one lot and about one size in a charge.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Wood">Wood, typical piece, size spread and start, as a case of its own whose only period is the box.</param>
/// <param name="Pieces">How many.</param>
/// <param name="Shelf">Where they lie.</param>
/// <param name="ExposedShare">Part of the faces that air reaches, 0.1 to 1: close packing hides the rest.</param>
public sealed record ChargeClass(string Name, DryingCase Wood, int Pieces, ShelfPlace Shelf, double ExposedShare)
{
    /// <summary>When it is taken out of the stream of air and closed up in a bin in the warm box, from loading; null: never. [d]</summary>
    public double? PullDay { get; init; }
}
