using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Weighing;

/// <summary>A slice across the grain, weighed as cut and again oven-dry.</summary>
public sealed record MoistureSection
{
    private MoistureSection(Mass wet, Mass dry) => (Wet, Dry) = (wet, dry);

    /// <summary>As cut.</summary>
    public Mass Wet { get; }

    /// <summary>Dried to constant mass.</summary>
    public Mass Dry { get; }

    /// <summary>Water over oven-dry wood when it was cut (physics.md, Q1).</summary>
    public MoistureContent Moisture => MoistureContent.FromFraction((Wet.Kilograms - Dry.Kilograms) / Dry.Kilograms);

    /// <summary>A section, or what is wrong with its masses.</summary>
    /// <param name="wet">As cut.</param>
    /// <param name="dry">Dried to constant mass.</param>
    /// <param name="field">Where they came from.</param>
    public static Result<MoistureSection> Make(Mass wet, Mass dry, string field)
    {
        if (!(dry.Kilograms > 0)) return ResultOf.Failure<MoistureSection>(field, "The oven-dry mass is nothing.", "Give the mass as cut, then the mass from the oven, both above 0, such as \"98.55 g > 59.20 g\".");
        if (dry.Kilograms > wet.Kilograms)
            return ResultOf.Failure<MoistureSection>(
                field,
                Invariant($"The section is heavier dry ({1000 * dry.Kilograms:0.##} g) than wet ({1000 * wet.Kilograms:0.##} g)."),
                "Drying only takes away: give the mass as cut first, then the mass from the oven; where that is so already, weigh again.");
        if (wet.Kilograms > 6 * dry.Kilograms)
            return ResultOf.Failure<MoistureSection>(
                field,
                Invariant($"From {1000 * wet.Kilograms:0.##} g to {1000 * dry.Kilograms:0.##} g is {100 * (wet.Kilograms / dry.Kilograms - 1):0} % dry basis, which no wood holds."),
                "Up to 500 % dry basis is read; see whether both masses have their right unit.");
        return ResultOf.Success(new MoistureSection(wet, dry));
    }
}
