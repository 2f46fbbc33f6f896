namespace Rickyard.Core.Measuring.Ovens;

/// <summary>A published way to dry wood to constant mass.</summary>
/// <param name="Key">Short name a person types.</param>
/// <param name="Name">Whole name.</param>
/// <param name="Appliance">Oven or microwave.</param>
public sealed record OvenMethod(string Key, string Name, Appliance Appliance)
{
    /// <summary>Lowest and highest temperature, where the method gives one. [°C]</summary>
    public (double Low, double High)? Celsius { get; init; }

    /// <summary>Most power, where the method gives one. [W]</summary>
    public double? Watts { get; init; }

    /// <summary>Before the first weighing worth comparing (judgement where the words give none). [h]</summary>
    public required double FirstHours { get; init; }

    /// <summary>Between two weighings that are compared. [h]</summary>
    public required double IntervalHours { get; init; }

    /// <summary>Largest loss over one interval, as a multiple of what <see cref="LimitOf"/> names.</summary>
    public required double Limit { get; init; }

    /// <summary>What the limit is a multiple of.</summary>
    public required LossLimit LimitOf { get; init; }

    /// <summary>How limit and interval are vouched for.</summary>
    public required string NumbersMark { get; init; }

    /// <summary>The end in the words of the source; empty where it gives none.</summary>
    public required string Words { get; init; }

    /// <summary>What is to be dried; empty where the source does not say.</summary>
    public required string Specimen { get; init; }

    /// <summary>Whether the method reports on wet basis.</summary>
    public required bool IsWetBasis { get; init; }

    /// <summary>Part of the dry wood that may go off with the water, judgement. [–]</summary>
    public required double Overshoot { get; init; }

    /// <summary>How words and specimen are vouched for.</summary>
    public required string Mark { get; init; }

    /// <summary>Where they are from.</summary>
    public required string Source { get; init; }

    /// <summary>Largest loss over one interval at which the mass counts as constant. [kg]</summary>
    /// <param name="mass">Present mass. [kg]</param>
    /// <param name="lost">All that was lost since the start. [kg]</param>
    /// <param name="balance">Smallest step of the balance. [kg]</param>
    public double LargestLoss(double mass, double lost, double balance) => Limit * LimitOf switch
    {
        LossLimit.Balance => balance,
        LossLimit.Mass => mass,
        LossLimit.Loss => lost,
        LossLimit.Gram => 0.001,
        _ => throw new InvalidOperationException($"{LimitOf} is no limit."),
    };
}
