using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Weighing;

/// <summary>What a marked split held when it was first weighed, and how far that may be off.</summary>
/// <param name="Moisture">Water over oven-dry wood.</param>
/// <param name="Error">How far it may be off either way. [kg kg⁻¹]</param>
/// <param name="Sections">Sections it rests on; 0 for an assumed one.</param>
public sealed record StartMoisture(MoistureContent Moisture, double Error, int Sections)
{
    // Judgement: trees of one wood differ by about a fifth; one end of a piece is not the other; an oven section is not better than a point.
    private const double AssumedShare = 0.20, OneSection = 0.03, SeveralSections = 0.01;

    /// <summary>A figure from a book or another tree: may be off by a fifth of itself (judgement).</summary>
    public static StartMoisture Assumed(MoistureContent moisture) => new(moisture, AssumedShare * moisture.Fraction, 0);

    /// <summary>The mean of the sections: one may be off by 3 points, two or more by half of what lies between them, at least 1 point (judgement).</summary>
    /// <param name="sections">One or more, from both ends of the piece where there are two.</param>
    public static StartMoisture FromSections(IReadOnlyList<MoistureSection> sections)
    {
        var each = sections.Select(section => section.Moisture.Fraction).ToList();
        var error = each.Count == 1 ? OneSection : Math.Max(SeveralSections, (each.Max() - each.Min()) / 2);
        return new(MoistureContent.FromFraction(each.Average()), error, each.Count);
    }
}
