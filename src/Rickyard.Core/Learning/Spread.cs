namespace Rickyard.Core.Learning;

/// <summary>A number with its spread.</summary>
/// <param name="Low">A tenth lies below. </param>
/// <param name="Middle">Half.</param>
/// <param name="High">Nine tenths.</param>
public readonly record struct Spread(double Low, double Middle, double High);
