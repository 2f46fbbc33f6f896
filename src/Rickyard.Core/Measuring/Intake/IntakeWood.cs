using Rickyard.Core.Cases;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>The wood that a reading is of: the lot of the case, or a class of its charge.</summary>
/// <param name="Class">Name of the class; empty where the case has none.</param>
/// <param name="Case">Its wood and typical piece.</param>
internal sealed record IntakeWood(string Class, DryingCase Case)
{
    /// <summary>A split is hardly further from the typical one than this many standard deviations of the width; judgement.</summary>
    private const double FurthestSpreads = 4;

    /// <summary>Typed sizes are hardly better than this; judgement. [–]</summary>
    private const double LeastSpread = 0.10;

    /// <summary>The narrowest split beside the typical one; judgement. [–]</summary>
    private const double Narrowest = 0.2;

    public Species Species => Case.Species;

    /// <summary>With every pore full of water. [kg kg⁻¹]</summary>
    public double MaximumMoisture => WoodDensity.MaximumMoisture(Case.BasicDensity);

    /// <summary>The widest split of the lot with its pores full. [kg]</summary>
    public double HeaviestPiece => DryMass * Math.Pow(1 + FurthestSpreads * Spread, 2) * (1 + MaximumMoisture);

    /// <summary>The narrowest split, oven-dry, after all splitting again. [kg]</summary>
    public double LightestPiece => DryMass * Math.Pow(Math.Max(Narrowest, 1 - FurthestSpreads * Spread), 2) / Into;

    private double DryMass => Case.Split.Volume * Case.BasicDensity;

    private double Spread => Math.Max(LeastSpread, Case.SizeSpread);

    private int Into => Case.Periods.OfType<SplitAgainPeriod>().Aggregate(1, (into, period) => into * period.Into);
}
