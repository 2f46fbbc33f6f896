namespace Rickyard.Core.Drying;

/// <summary>How exactly, and in what steps, time is walked.</summary>
/// <param name="Absolute">Error allowed in each step whatever the value. [quantity]</param>
/// <param name="Relative">Error allowed in each step per value.</param>
/// <param name="FirstStep">[s]</param>
/// <param name="LongestStep">[s]</param>
/// <param name="ShortestStep">A step this short is accepted whatever its error. [s]</param>
/// <param name="AllowNegative">Whether values below zero are legitimate (temperatures in °C, not moisture).</param>
public sealed record StepControl(
    double Absolute, double Relative, double FirstStep, double LongestStep, double ShortestStep = 1e-3, bool AllowNegative = false)
{
    /// <summary>
    /// For forecasts: 0.1 % dry basis and 0.2 % of the value in each step, steps of at most a day. The study in docs/physics.md, N5, shows what it costs.
    /// </summary>
    public static StepControl Forecast { get; } = new(1e-3, 2e-3, 60, 24 * 3600);
}
