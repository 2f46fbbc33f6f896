using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>What is wrong with one reading, all of it.</summary>
/// <param name="given">The reading.</param>
internal sealed class RowFaults(GivenReading given)
{
    private readonly List<Problem> _problems = [];

    public bool Any => _problems.Count > 0;

    public void Wrong(string column, string whatIsWrong, string whatToDo) => _problems.Add(new(given.FieldOf(column), whatIsWrong, whatToDo));

    public void Wrong(Problem problem) => _problems.Add(problem);

    /// <summary>The value, or null with its problems told.</summary>
    public T? Kept<T>(Result<T> result)
        where T : class
    {
        _problems.AddRange(result.Problems);
        return result.Value;
    }

    public LeftOutReading LeftOut() => new(given.Place, given.Line, given.Words, _problems);
}
