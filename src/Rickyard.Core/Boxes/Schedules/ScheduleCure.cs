namespace Rickyard.Core.Boxes.Schedules;

/// <summary>One change that would make the goal possible where it is not.</summary>
/// <param name="Kind">What to change.</param>
/// <param name="From">As it is: days, width of the largest class [m], pieces, or mean start moisture [kg kg⁻¹].</param>
/// <param name="To">What it had to be, in the same unit; null where even the extreme tried does not help.</param>
public sealed record ScheduleCure(CureKind Kind, double From, double? To);
