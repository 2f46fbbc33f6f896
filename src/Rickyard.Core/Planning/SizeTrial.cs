namespace Rickyard.Core.Planning;

/// <summary>One size that was run.</summary>
/// <param name="Width">See <see cref="SplitWidth"/>. [m]</param>
/// <param name="FirstDays">Day on which each member's core first was dry enough, rising; infinity for not within the run. [d]</param>
public sealed record SizeTrial(double Width, IReadOnlyList<double> FirstDays)
{
    /// <summary>Part of the members that are ready by a day.</summary>
    public double ChanceBy(double day) => FirstDays.Count(first => first <= day) / (double)FirstDays.Count;

    /// <summary>First day by which that part of the members is ready, or null when it is not within the run. [d]</summary>
    /// <param name="confidence">Above 0, up to 1.</param>
    public double? DayOf(double confidence) =>
        FirstDays[(int)Math.Ceiling(confidence * FirstDays.Count - 1e-9) - 1] is var day && double.IsFinite(day) ? day : null;
}
