namespace Rickyard.Core.Learning.StandIns;

/// <summary>All that the engine is asked for, each once, numbered, and the times at which to stop for it.</summary>
internal sealed class OutputTable
{
    private readonly Dictionary<EngineOutput, int> _numbers = [];
    private readonly List<EngineOutput> _all = [];

    /// <summary>Outputs in order of their numbers.</summary>
    internal IReadOnlyList<EngineOutput> All => _all;

    /// <summary>Number of an output, asked for from now on.</summary>
    internal int Ask(double day, Sensor sensor)
    {
        var output = new EngineOutput(day, sensor);
        if (_numbers.TryGetValue(output, out var number)) return number;
        _numbers.Add(output, _all.Count);
        _all.Add(output);
        return _all.Count - 1;
    }

    /// <summary>Times at which something is asked for, rising. [d]</summary>
    internal double[] Days() => [.. _all.Select(output => output.Day).Distinct().Order()];
}
