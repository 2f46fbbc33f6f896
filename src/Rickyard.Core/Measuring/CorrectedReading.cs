namespace Rickyard.Core.Measuring;

/// <summary>What a pin reading means in this wood at this temperature.</summary>
/// <param name="Moisture">Best value; or the bound where the verdict is at least or at most. [kg kg⁻¹]</param>
/// <param name="Low">Lower end of the 90 % range (0 where only an upper bound is known). [kg kg⁻¹]</param>
/// <param name="High">Upper end of the 90 % range (for "at least" the most the wood can hold). [kg kg⁻¹]</param>
/// <param name="Verdict">A value, or a bound.</param>
/// <param name="OwnSpread">Standard deviation of what differs from one reading to the next: pin noise, rounding of the display. [kg kg⁻¹]</param>
/// <param name="SharedSpread">Standard deviation of what all readings of this meter on this wood share: the species curve, and between published temperature corrections. [kg kg⁻¹]</param>
/// <param name="Notes">Sentences: what was corrected and by how much, traps (frozen wood, wet skin, end grain), cautions on marks.</param>
public sealed record CorrectedReading(
    double Moisture, double Low, double High, MeterVerdict Verdict, double OwnSpread, double SharedSpread, IReadOnlyList<string> Notes);
