namespace Rickyard.Tests.Architecture;

/// <summary>One source file of ours.</summary>
/// <param name="Name">Path from the root of the repository.</param>
/// <param name="Text">All of it.</param>
internal sealed record Source(string Name, string Text);
