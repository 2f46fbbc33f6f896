namespace Rickyard.Core.Learning;

/// <summary>What was learnt of one class of a charge in a hot box.</summary>
/// <param name="Name">The class.</param>
/// <param name="Run">What was learnt of it.</param>
public sealed record ClassLearning(string Name, LearningRun Run);
