using Rickyard.Core.Quantities;

namespace Rickyard.Weigh;

/// <summary>What the scale tells: the sentence with its numbers, what to do, and the numbers themselves, null where they do not apply.</summary>
/// <param name="Sentence">The answer, with its numbers.</param>
/// <param name="Next">What to do, with a verb.</param>
/// <param name="Notes">What it rests on and how far it may be off.</param>
internal sealed record WeighAnswer(string Sentence, string Next, IReadOnlyList<string> Notes)
{
    /// <summary>Mean of the piece, the sample or the readings. [kg kg⁻¹]</summary>
    public double? Moisture { get; init; }

    /// <summary>Lowest that it may be. [kg kg⁻¹]</summary>
    public double? Low { get; init; }

    /// <summary>Highest that it may be. [kg kg⁻¹]</summary>
    public double? High { get; init; }

    public Mass? OvenDry { get; init; }

    public Mass? TargetMass { get; init; }

    /// <summary>Target masses were the start moisture off as far as it may be.</summary>
    public (Mass Lightest, Mass Heaviest)? TargetRange { get; init; }

    public bool? IsConstant { get; init; }

    public IReadOnlyList<string> Cautions { get; init; } = [];

    public int? PiecesRead { get; init; }

    /// <summary>Between the pieces. [kg kg⁻¹]</summary>
    public double? Spread { get; init; }

    public double? Wettest { get; init; }

    public int? PiecesNeeded { get; init; }
}
