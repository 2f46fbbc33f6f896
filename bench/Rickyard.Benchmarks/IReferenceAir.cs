namespace Rickyard.Benchmarks;

/// <summary>Air of a comparison problem, averaged over a step.</summary>
internal interface IReferenceAir
{
    /// <summary>The mean over a step. Times in seconds.</summary>
    MeanAir Mean(double time, double step);
}
