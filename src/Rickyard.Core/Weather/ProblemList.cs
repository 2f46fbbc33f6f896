using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>Problems of the lines of one file; after the first ten the rest are only counted.</summary>
/// <param name="file">Name of the file.</param>
internal sealed class ProblemList(string file)
{
    private const int Shown = 10;
    private readonly List<Problem> _problems = [];
    private int _hidden;

    public bool Any => _problems.Count > 0;

    /// <summary>Adds what is wrong with a line.</summary>
    public void Add(int line, string whatIsWrong, string whatToDo)
    {
        if (_problems.Count < Shown) _problems.Add(new($"{file}, line {line}", whatIsWrong, whatToDo));
        else _hidden++;
    }

    /// <summary>Adds what is wrong with the file as a whole.</summary>
    public void Add(string whatIsWrong, string whatToDo) => _problems.Add(new(file, whatIsWrong, whatToDo));

    /// <summary>What is shown of them.</summary>
    public IReadOnlyList<Problem> All => _hidden == 0
        ? _problems
        : [.. _problems, new(file, $"{_hidden} more lines have like problems.", "Mend the file, or fetch it again.")];

    public Result<HourlyWeather> Failure() => ResultOf.Failure<HourlyWeather>(All);
}
