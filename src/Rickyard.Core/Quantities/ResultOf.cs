namespace Rickyard.Core.Quantities;

/// <summary>Makes a <see cref="Result{T}"/>.</summary>
public static class ResultOf
{
    /// <summary>A value without problems.</summary>
    public static Result<T> Success<T>(T value)
        where T : class => new(value, []);

    /// <summary>No value; at least one problem.</summary>
    public static Result<T> Failure<T>(IReadOnlyList<Problem> problems)
        where T : class => problems.Count > 0
            ? new(null, problems)
            : throw new ArgumentException("A failure needs at least one problem.", nameof(problems));

    /// <summary>No value; one problem.</summary>
    public static Result<T> Failure<T>(string field, string whatIsWrong, string whatToDo)
        where T : class => Failure<T>([new Problem(field, whatIsWrong, whatToDo)]);
}
