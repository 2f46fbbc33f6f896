using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Weighing;

/// <summary>A split that is weighed again and again: its start moisture gives its oven-dry mass, and that its moisture at every later mass (physics.md, Q2 to Q6).</summary>
/// <param name="StartMass">When the start moisture was so; above 0.</param>
/// <param name="Start">The moisture then.</param>
public sealed record MarkedSplit(Mass StartMass, StartMoisture Start)
{
    // Judgement: rain on a split in a stack adds some per cent of it; a tenth is another piece, ice, or a slip of the pen.
    private const double LargestGain = 0.10;

    /// <summary>Mass of the wood alone.</summary>
    public Mass OvenDry => Mass.FromKilograms(StartMass.Kilograms / (1 + Start.Moisture.Fraction));

    /// <summary>Mean moisture of the whole piece at a mass; below 0 where it is lighter than oven-dry. [kg kg⁻¹]</summary>
    public double MoistureAt(Mass mass) => mass.Kilograms / OvenDry.Kilograms - 1;

    /// <summary>The mass at which the mean of the whole piece is at a moisture.</summary>
    public Mass MassAt(MoistureContent moisture) => Mass.FromKilograms(OvenDry.Kilograms * (1 + moisture.Fraction));

    /// <summary>How far the moisture at a mass is off where the start moisture is. [kg kg⁻¹]</summary>
    /// <param name="mass">Now.</param>
    /// <param name="startError">How far the start moisture is off. [kg kg⁻¹]</param>
    public double ErrorFromStart(Mass mass, double startError) => (1 + MoistureAt(mass)) / (1 + Start.Moisture.Fraction) * startError;

    /// <summary>How far the moisture at a mass is off where the weighing is. [kg kg⁻¹]</summary>
    /// <param name="mass">Now.</param>
    /// <param name="share">How far the weighing is off, as a fraction of the mass.</param>
    public double ErrorFromWeighing(Mass mass, double share) => (1 + MoistureAt(mass)) * share;

    /// <summary>How far the moisture at a mass may be off altogether: by the start moisture and by both weighings. [kg kg⁻¹]</summary>
    /// <param name="mass">Now.</param>
    /// <param name="scale">Smallest step of the scale. [kg]</param>
    public double Error(Mass mass, double scale)
    {
        var start = ErrorFromStart(mass, Start.Error);
        var weighing = ErrorFromScale(mass, scale);
        return Math.Sqrt(start * start + weighing * weighing);
    }

    /// <summary>How far it is off where both weighings are off by half a step of the scale. [kg kg⁻¹]</summary>
    /// <param name="mass">Now.</param>
    /// <param name="scale">Smallest step of the scale. [kg]</param>
    public double ErrorFromScale(Mass mass, double scale)
    {
        double now = ErrorFromWeighing(mass, 0.5 * scale / mass.Kilograms), then = ErrorFromWeighing(mass, 0.5 * scale / StartMass.Kilograms);
        return Math.Sqrt(now * now + then * then);
    }

    /// <summary>The mass at which a moisture is reached, were the start moisture off by its error up and down: the lightest and the heaviest.</summary>
    public (Mass Lightest, Mass Heaviest) MassRange(MoistureContent moisture)
    {
        Mass At(double start) => Mass.FromKilograms(StartMass.Kilograms * (1 + moisture.Fraction) / (1 + start));
        return (At(Start.Moisture.Fraction + Start.Error), At(Start.Moisture.Fraction - Start.Error));
    }

    /// <summary>What cannot be in a row of later masses.</summary>
    /// <param name="masses">In the order they were weighed.</param>
    /// <param name="field">Where they came from.</param>
    public IReadOnlyList<Problem> Problems(IReadOnlyList<Mass> masses, string field)
    {
        List<Problem> problems = [];
        var lowest = StartMass.Kilograms;
        foreach (var kilograms in masses.Select(mass => mass.Kilograms))
        {
            if (kilograms > (1 + LargestGain) * lowest) problems.Add(Gained(kilograms, lowest, field));
            if (kilograms < OvenDry.Kilograms) problems.Add(TooLight(kilograms, field));
            lowest = Math.Min(lowest, kilograms);
        }

        return problems;
    }

    private static Problem Gained(double kilograms, double lowest, string field) => new(
        field,
        Invariant($"{kilograms:0.000} kg is {100 * (kilograms / lowest - 1):0} % more than the {lowest:0.000} kg it had before; rain cannot do that."),
        "At most 10 % more than the lightest weighing before is read: see whether it is the same split, its unit is right, and no ice, snow or mud sits on it, then weigh again.");

    private Problem TooLight(double kilograms, string field) => new(
        field,
        Invariant($"{kilograms:0.000} kg is lighter than the split would be oven-dry, {OvenDry.Kilograms:0.000} kg."),
        Start.Sections == 0
            ? "No wood is: the start moisture was higher than assumed, or bark or wood broke off. Cut a section from the middle, dry it, and start again from that."
            : "No wood is: bark or wood broke off, or a mass is wrong. Weigh again, or cut a new section from the middle and start again from that.");
}
