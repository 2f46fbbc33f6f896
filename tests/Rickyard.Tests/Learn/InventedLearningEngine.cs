using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using Rickyard.Learn;
using Rickyard.Testing.Learning;

namespace Rickyard.Tests.Learn;

/// <summary>Learns nothing: answers with an invented run, and remembers what it was asked.</summary>
internal sealed class InventedLearningEngine(SampleLearning? sample = null) : ILearningEngine
{
    public LearningRequest? Asked { get; private set; }

    public IReadOnlyList<Observation> Learnt { get; private set; } = [];

    /// <summary>Called while the work goes on, after 43 % of it.</summary>
    public Action Meanwhile { get; init; } = () => { };

    public Result<LearningRun> Run(
        DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        (Asked, Learnt) = (request, observations);
        progress?.Report(0.43);
        Meanwhile();
        return ResultOf.Success((sample ?? SampleLearning.Usual).Build(request));
    }
}
