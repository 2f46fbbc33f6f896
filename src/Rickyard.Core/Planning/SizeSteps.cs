namespace Rickyard.Core.Planning;

/// <summary>The widths that are tried; an axe does not split finer.</summary>
public static class SizeSteps
{
    private const double Step = 0.005;

    /// <summary>Smallest: kindling. [m]</summary>
    public const double Smallest = 0.03;

    /// <summary>Largest. [m]</summary>
    public const double Largest = 0.30;

    /// <summary>Widths for one question, every half centimetre. [m]</summary>
    public static IReadOnlyList<double> Fine { get; } = [.. Enumerable.Range(0, (int)Math.Round((Largest - Smallest) / Step) + 1).Select(step => Math.Round(Smallest + step * Step, 3))];

    /// <summary>Widths for a chart, about a tenth apart. [m]</summary>
    public static IReadOnlyList<double> Coarse { get; } = [0.03, 0.035, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.10, 0.11, 0.12, 0.13, 0.14, 0.16, 0.18, 0.20, 0.22, 0.25, 0.30];
}
