using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Ovens;

/// <summary>The weighings of one sample on its way to constant mass, and what they say so far (physics.md, Q9 to Q11).</summary>
public sealed record OvenWorksheet
{
    // Judgement: what sticks to a cooling sample, as a part of its mass, before a gain is a mistake.
    private const double AllowedGain = 0.002;

    private const double TimeSlack = 1e-3;

    private readonly double _balance;

    private OvenWorksheet(OvenMethod method, IReadOnlyList<OvenWeighing> weighings, double balance) => (Method, Weighings, _balance) = (method, weighings, balance);

    /// <summary>How it is dried.</summary>
    public OvenMethod Method { get; }

    /// <summary>The first is the sample as it went in.</summary>
    public IReadOnlyList<OvenWeighing> Weighings { get; }

    /// <summary>Latest mass, the oven-dry one when it is constant.</summary>
    public Mass Dry => Weighings[^1].Mass;

    /// <summary>Lost since the latest weighing that lies at least one interval back, the one at the start left out; null before there is one. [kg]</summary>
    public double? LatestLoss
    {
        get
        {
            var last = Weighings[^1];
            var before = Weighings.Skip(1).LastOrDefault(weighing => last.Hours - weighing.Hours >= Method.IntervalHours * (1 - TimeSlack));
            return before is null ? null : Math.Max(0, before.Mass.Kilograms - last.Mass.Kilograms);
        }
    }

    /// <summary>Largest loss over one interval at which the mass counts as constant. [kg]</summary>
    public double LargestLoss => Method.LargestLoss(Dry.Kilograms, Weighings[0].Mass.Kilograms - Dry.Kilograms, _balance);

    /// <summary>Whether the balance cannot show a loss as small as the method asks for.</summary>
    public bool IsBalanceTooCoarse => Method.LimitOf != LossLimit.Balance && LargestLoss < _balance * (1 - 1e-9);

    /// <summary>Smallest step of the balance.</summary>
    public Mass Balance => Mass.FromKilograms(_balance);

    /// <summary>Whether the method's end is reached.</summary>
    public bool IsConstant => Weighings[^1].Hours >= Method.FirstHours * (1 - TimeSlack) && LatestLoss is { } loss && loss <= LargestLoss * (1 + 1e-9) + 1e-12;

    /// <summary>Moisture as it went in, so far: too low as long as it is not constant. [kg kg⁻¹]</summary>
    public double? Moisture => Weighings.Count > 1 ? Wetness(Dry.Kilograms) : null;

    /// <summary>Lowest that the moisture may be: the balance, and wood that went off with the water. [kg kg⁻¹]</summary>
    public double? Low => Moisture is { } moisture ? Math.Max(0, Wetness(Dry.Kilograms * (1 + Method.Overshoot)) - BalanceError(moisture)) : null;

    /// <summary>Highest that it may be: the balance, and water still inside; null where three weighings do not yet tell how much. [kg kg⁻¹]</summary>
    public double? High => Moisture is { } moisture && WaterLeft is { } left ? Wetness(Dry.Kilograms - left) + BalanceError(moisture) : null;

    /// <summary>
    /// Water still inside: once constant, what the latest interval took, or half a step of the balance where that is more; before that, what is left where the last two rates fall on together as an
    /// exponential; null where they do not fall. Judgement. [kg]
    /// </summary>
    public double? WaterLeft
    {
        get
        {
            if (IsConstant) return Believable(Math.Max(LatestLoss ?? 0, 0.5 * _balance));
            if (Weighings.Count < 3) return null;
            var (first, middle, last) = (Weighings[^3], Weighings[^2], Weighings[^1]);
            double early = Rate(first, middle), late = Rate(middle, last);
            if (!(late > 0 && early > late)) return null;
            var decay = Math.Log(early / late) / ((last.Hours - first.Hours) / 2);
            return Believable(late * Math.Exp(-decay * (last.Hours - middle.Hours) / 2) / decay);
        }
    }

    /// <summary>Until when to dry before the next weighing, since it went in; null once constant. [h]</summary>
    public double? NextHours => IsConstant ? null : Math.Max(Method.FirstHours, Weighings[^1].Hours + (Weighings.Count == 1 ? 0 : Method.IntervalHours));

    /// <summary>The worksheet, or every problem of its weighings.</summary>
    /// <param name="method">How it is dried.</param>
    /// <param name="weighings">In the order they were weighed.</param>
    /// <param name="balance">Smallest step of the balance, above 0.</param>
    /// <param name="field">Where they came from.</param>
    public static Result<OvenWorksheet> Make(OvenMethod method, IReadOnlyList<OvenWeighing> weighings, Mass balance, string field)
    {
        List<Problem> problems = [];
        if (weighings.Count == 0) problems.Add(new(field, "There is no weighing.", "Give at least the sample as it goes in, such as \"0 h: 136 g\"."));
        if (!(balance.Kilograms > 0)) problems.Add(new(field, "The step of the balance is nothing.", "Give what its last digit is worth, such as \"0.1 g\"."));
        if (weighings.Any(weighing => !(weighing.Mass.Kilograms > 0))) problems.Add(new(field, "A mass is nothing.", "Give masses above 0."));
        foreach (var (before, after) in weighings.Zip(weighings.Skip(1))) problems.AddRange(Between(before, after, balance, field));
        if (problems.Count == 0 && weighings[0].Mass.Kilograms > 6 * weighings[^1].Mass.Kilograms)
            problems.Add(new(field, "It lost more than five times what is left, which no wood does.", "See whether all masses have their right unit and the tray is taken off each."));
        return problems.Count > 0 ? ResultOf.Failure<OvenWorksheet>(problems) : ResultOf.Success(new OvenWorksheet(method, weighings, balance.Kilograms));
    }

    private static IEnumerable<Problem> Between(OvenWeighing before, OvenWeighing after, Mass balance, string field)
    {
        if (!(after.Hours > before.Hours))
        {
            yield return new(field, $"A weighing at {Time(after.Hours)} follows one at {Time(before.Hours)}.", "Give the weighings in order, each later than the one before, counted from when the sample went in.");
            yield break;
        }

        double gain = after.Mass.Kilograms - before.Mass.Kilograms, allowed = Math.Max(2 * balance.Kilograms, AllowedGain * before.Mass.Kilograms);
        if (gain > allowed * (1 + 1e-9))
            yield return new(
                field,
                Invariant($"It gained {1000 * gain:0.##} g between {Time(before.Hours)} and {Time(after.Hours)}; a sample only loses while it dries."),
                Invariant($"A gain of {1000 * allowed:0.##} g is taken for the balance or for damp drawn while it cooled. Weigh it warm and at once, on the same balance and without the tray."));
    }

    private double? Believable(double left) => left < Dry.Kilograms / 2 ? left : null;

    private static string Time(double hours) => hours < 2 ? Invariant($"{60 * hours:0.#} min") : Invariant($"{hours:0.##} h");

    private double Wetness(double dry) => Weighings[0].Mass.Kilograms / dry - 1;

    // Half a step of the balance at either weighing.
    private double BalanceError(double moisture) => (1 + moisture) * 0.5 * _balance * Math.Sqrt(1 / Math.Pow(Dry.Kilograms, 2) + 1 / Math.Pow(Weighings[0].Mass.Kilograms, 2));

    private static double Rate(OvenWeighing before, OvenWeighing after) => (before.Mass.Kilograms - after.Mass.Kilograms) / (after.Hours - before.Hours);
}
