using Rickyard.Core.Measuring;

namespace Rickyard.Core.Learning;

/// <summary>What one more reading, taken today, would be worth.</summary>
/// <param name="Words">What to do: "split one open and probe the core of 3 pieces".</param>
/// <param name="Pins">Where the pins go, or null for a weighing or an oven test.</param>
/// <param name="Piece">The marked split it is about, or empty for any other of the lot.</param>
/// <param name="GivesUpPiece">Whether the piece is lost for further weighings.</param>
/// <param name="DaysNow">Width of the 80 % range of the day the lot is ready. [d]</param>
/// <param name="DaysAfter">The same as expected after this reading. [d]</param>
public sealed record ReadingGain(string Words, Pins? Pins, string Piece, bool GivesUpPiece, double DaysNow, double DaysAfter)
{
    /// <summary>Days of uncertainty it is expected to take away. [d]</summary>
    public double DaysGained => DaysNow - DaysAfter;
}
