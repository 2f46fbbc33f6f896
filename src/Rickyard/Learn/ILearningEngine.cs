using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;

namespace Rickyard.Learn;

/// <summary>Learns from what was observed of a case.</summary>
internal interface ILearningEngine
{
    /// <summary>The forecast that has learnt, or what kept it from being made, such as weather that cannot be read.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="observations">What was observed.</param>
    /// <param name="request">Band, members, seed, today.</param>
    /// <param name="caseFolder">Folder of the case file, from which its paths are meant.</param>
    /// <param name="progress">Told how much is done, 0 to 1.</param>
    /// <param name="cancellation">Stops the work.</param>
    Result<LearningRun> Run(
        DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation);
}
