namespace Rickyard.Core.Wood;

/// <summary>A published value that carries where it comes from.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Mark">How well it is vouched for.</param>
/// <param name="Source">Work, table, and what was done to it.</param>
public sealed record Sourced<T>(T Value, Mark Mark, string Source);
