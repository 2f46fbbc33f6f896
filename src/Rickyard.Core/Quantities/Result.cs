using System.Diagnostics.CodeAnalysis;

namespace Rickyard.Core.Quantities;

/// <summary>A value, or every problem that kept it from being made; a person's input comes back as this, never as an exception.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public sealed class Result<T>
    where T : class
{
    internal Result(T? value, IReadOnlyList<Problem> problems)
    {
        Value = value;
        Problems = problems;
    }

    /// <summary>The value, or null when there are problems.</summary>
    public T? Value { get; }

    /// <summary>All problems; empty when the value is there.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>Gives the value when there is one.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value)
    {
        value = Value;
        return value is not null;
    }
}
