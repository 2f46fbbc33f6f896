using System.CommandLine;

namespace Rickyard.Commands;

/// <summary>A command that knows how it is used.</summary>
/// <param name="name">The word to type.</param>
/// <param name="description">What it answers.</param>
/// <param name="examples">Whole command lines.</param>
internal sealed class TaskCommand(string name, string description, IReadOnlyList<string> examples) : Command(name, description)
{
    /// <summary>Whole command lines.</summary>
    public IReadOnlyList<string> Examples { get; } = examples;
}
