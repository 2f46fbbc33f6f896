using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>What came to light while a case was read: every problem, and every default taken or guess made.</summary>
internal sealed class CaseFindings
{
    private readonly List<Problem> _problems = [];
    private readonly List<string> _assumptions = [];

    public IReadOnlyList<Problem> Problems => _problems;

    public IReadOnlyList<string> Assumptions => _assumptions;

    public void Wrong(string path, string whatIsWrong, string whatToDo) => Wrong(new Problem(path, whatIsWrong, whatToDo));

    /// <summary>Tells a problem once, however often its place was read.</summary>
    public void Wrong(Problem problem)
    {
        if (!_problems.Contains(problem)) _problems.Add(problem);
    }

    /// <summary>The value, or null with its problems told.</summary>
    public T? Kept<T>(Result<T> result)
        where T : class
    {
        foreach (var problem in result.Problems) Wrong(problem);
        return result.Value;
    }

    /// <summary>Says a default once, however often it was taken.</summary>
    public void Assume(string sentence)
    {
        if (!_assumptions.Contains(sentence)) _assumptions.Add(sentence);
    }
}
