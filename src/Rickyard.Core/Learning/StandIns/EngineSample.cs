namespace Rickyard.Core.Learning.StandIns;

/// <summary>The engine's answers for members spread over the unknowns.</summary>
/// <param name="Numbers">Standard normal numbers of each member, by member and unknown. [–]</param>
/// <param name="Answers">Natural logarithms of the outputs, by output and member.</param>
/// <param name="GroupSize">Members that share rack and weather, side by side in the lists.</param>
internal sealed record EngineSample(double[][] Numbers, double[][] Answers, int GroupSize)
{
    internal int Members => Numbers.Length;

    internal int Groups => Members / GroupSize;
}
