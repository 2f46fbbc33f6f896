namespace Rickyard.Testing.Learning;

/// <summary>What a study of synthetic lots found.</summary>
/// <param name="Histograms">Ranks of truths, each a histogram.</param>
/// <param name="Stages">Marks by number of looks.</param>
public sealed record HonestyReport(IReadOnlyList<RankHistogram> Histograms, IReadOnlyList<StageScore> Stages);
