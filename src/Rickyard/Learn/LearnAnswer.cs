using Rickyard.Core.Learning;

namespace Rickyard.Learn;

/// <summary>A forecast that has learnt, with the band and the rows behind it.</summary>
/// <param name="Run">The forecast.</param>
/// <param name="Band">The cook's band.</param>
/// <param name="LeftOut">Rows that were not learnt from.</param>
internal sealed record LearnAnswer(LearningRun Run, CookBand Band, IReadOnlyList<LeftOutRow> LeftOut);
