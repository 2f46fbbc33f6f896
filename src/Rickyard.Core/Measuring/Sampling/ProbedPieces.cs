namespace Rickyard.Core.Measuring.Sampling;

/// <summary>Readings of several pieces of one lot, one a piece, and how well they tell the mean. [kg kg⁻¹]</summary>
/// <param name="Readings">Two or more.</param>
public sealed record ProbedPieces(IReadOnlyList<double> Readings)
{
    /// <summary>How far the mean may be off in a count of pieces, two points, and how sure that is to be.</summary>
    public const double WantedHalfWidth = 0.02, WantedConfidence = 0.90;

    /// <summary>Mean.</summary>
    public double Mean => Readings.Average();

    /// <summary>Standard deviation between the pieces.</summary>
    public double Spread => Math.Sqrt(Readings.Sum(reading => Math.Pow(reading - Mean, 2)) / (Readings.Count - 1));

    /// <summary>The wettest.</summary>
    public double Wettest => Readings.Max();

    /// <summary>How far their mean may lie from that of the lot, 90 times in 100.</summary>
    public double HalfWidth => PiecesNeeded.HalfWidth(Spread, Readings.Count, WantedConfidence);

    /// <summary>Pieces that make it two points, 90 times in 100.</summary>
    public int Needed => PiecesNeeded.For(Spread, WantedHalfWidth, WantedConfidence);
}
