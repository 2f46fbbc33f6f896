namespace Rickyard.Core.Drying;

/// <summary>When the core is in the cook's band: from–until, as days from the start, each early, middle and late (p10, p50, p90 of the lot).</summary>
/// <param name="BandLow">Lower edge of the band. [kg kg⁻¹]</param>
/// <param name="BandHigh">Upper edge. [kg kg⁻¹]</param>
/// <param name="From">Core falls to the upper edge; null where that does not happen within the run. [d]</param>
/// <param name="Until">Core falls below the lower edge; null where it does not. [d]</param>
/// <param name="ChanceReady">Part of the members whose core reached the band within the run.</param>
public sealed record ReadyWindow(double BandLow, double BandHigh, DaySpread From, DaySpread Until, double ChanceReady)
{
    /// <summary>Day on which each member's core first is at or below the upper edge, rising; infinity for one that does not come there within the run. [d]</summary>
    public IReadOnlyList<double> FirstDays { get; init; } = [];

    /// <summary>Equal in every value, the days of the members one by one.</summary>
    public bool Equals(ReadyWindow? other) =>
        other is not null && (BandLow, BandHigh, From, Until, ChanceReady) == (other.BandLow, other.BandHigh, other.From, other.Until, other.ChanceReady) && FirstDays.SequenceEqual(other.FirstDays);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(BandLow, BandHigh, From, Until, ChanceReady, FirstDays.Count);
}
