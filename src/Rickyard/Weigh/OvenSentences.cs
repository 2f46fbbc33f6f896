using Rickyard.Core.Measuring.Ovens;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Weigh;

/// <summary>A sample on its way to constant mass, in words.</summary>
/// <param name="sheet">Its weighings.</param>
/// <param name="unit">What the masses were typed in.</param>
internal sealed class OvenSentences(OvenWorksheet sheet, MassUnit unit)
{
    private const double DryForMicrowave = 0.20;

    private OvenMethod Method => sheet.Method;

    private bool IsMicrowave => Method.Appliance == Appliance.Microwave;

    public WeighAnswer Answer() => new(Sentence(), Next(), [.. Notes()])
    {
        Moisture = sheet.Moisture,
        Low = sheet.Low,
        High = sheet.High,
        OvenDry = sheet.IsConstant ? sheet.Dry : null,
        IsConstant = sheet.IsConstant,
        Cautions = OvenCautions.For(Method.Appliance),
    };

    private string Sentence()
    {
        var start = unit.Say(sheet.Weighings[0].Mass);
        if (sheet.Moisture is not { } moisture) return $"The sample goes in with {start}; nothing is known of its moisture yet.";
        if (sheet.IsConstant) return $"The sample held {Both(moisture)} when it went in: {start} then, {unit.Say(sheet.Dry)} now and constant; {Between()}.";
        return $"The sample held {Both(moisture)} by what it has lost so far, {start} down to {unit.Say(sheet.Dry)}, but it is not yet known to be constant; {Between()}.";
    }

    private string Between() => sheet.High is { } high
        ? Invariant($"the truth is likely between {100 * sheet.Low:0.0} and {100 * high:0.0} %")
        : Invariant($"the truth is likely above {100 * sheet.Low:0.0} %, how far above these weighings do not tell");

    private string Next()
    {
        if (sheet.NextHours is not { } next) return $"Take it out and write down {Reported(sheet.Moisture!.Value)}.";
        if (sheet.Weighings.Count == 1) return $"{(IsMicrowave ? "Heat it" : "Put it in")}{Setting()} and weigh it at {Time(next)}.";
        var lost = sheet.LatestLoss is { } loss ? $"it last lost {unit.SaySmall(loss)}" : $"no two weighings lie {Time(Method.IntervalHours)} apart yet";
        return $"Put it back{Setting()} and weigh it again at {Time(next)}: it is dry when {Dry()}; {lost}.";
    }

    private string Reported(double moisture) => Method.IsWetBasis ? Invariant($"{100 * moisture / (1 + moisture):0} % wet basis") : Invariant($"{100 * moisture:0} % dry basis");

    private string Dry() => sheet.LargestLoss > 0
        ? $"it loses no more than {unit.SaySmall(sheet.LargestLoss)} in {Time(Method.IntervalHours)}"
        : $"two weighings {Time(Method.IntervalHours)} apart are equal";

    private string Setting() => (Method.Celsius, Method.Watts) switch
    {
        ({ } celsius, _) when celsius.Low == celsius.High => Invariant($" at {celsius.Low:0} °C"),
        ({ } celsius, _) => Invariant($" at {celsius.Low:0} to {celsius.High:0} °C"),
        (_, { } watts) => Invariant($" at less than {watts:0} W"),
        _ => " at the lowest setting",
    };

    private IEnumerable<string> Notes()
    {
        var words = Method.Words.Length > 0 ? $"; its end: {Method.Words}" : "; it names no end";
        yield return $"Method: {Method.Name}{words} ({Method.Mark}; {Method.Source}).";
        yield return $"Taken as: {LimitWords()} in {Time(Method.IntervalHours)} ({Method.NumbersMark}), first compared at {Time(Method.FirstHours)} or later (judgement where the method gives no time).";
        if (Method.Specimen.Length > 0) yield return $"What to dry: {Method.Specimen}.";
        if (Method.IsWetBasis) yield return "This method reports on wet basis, water over the whole mass.";
        if (sheet.IsBalanceTooCoarse) yield return $"The balance is too coarse: its step of {unit.SaySmall(sheet.Balance.Kilograms)} hides a loss of {unit.SaySmall(sheet.LargestLoss)}. Dry a larger sample or use a finer balance.";
        if (IsMicrowave && sheet.Moisture < DryForMicrowave) yield return "Below 20 % dry basis a pin meter is the better choice (Wengert, woodworkingnetwork; text).";
        yield return Errors();
    }

    private string LimitWords() => Method.LimitOf switch
    {
        LossLimit.Balance when Method.Limit == 0 => "no loss that the balance shows",
        LossLimit.Balance => Invariant($"a loss of at most {Method.Limit:0.#} times the balance's step"),
        LossLimit.Mass => Invariant($"a loss of at most {100 * Method.Limit:0.##} % of the mass"),
        LossLimit.Loss => Invariant($"a loss of at most {100 * Method.Limit:0.##} % of what it has lost in all"),
        _ => Invariant($"a loss of at most {1000 * Method.Limit:0.##} mg"),
    };

    private string Errors()
    {
        var balance = $"the balance ({unit.SaySmall(sheet.Balance.Kilograms)} a step)";
        var overshoot = Invariant($"wood that goes off with the water, charring above all, makes it read up to {100 * Method.Overshoot * (1 + (sheet.Moisture ?? 0)):0.0} points too wet (judgement)");
        var left = sheet.WaterLeft is { } water && sheet.Moisture is not null ? $"stopping now leaves about {unit.SaySmall(water)} of water inside, which reads too dry" : "stopping early reads too dry";
        return $"What may be off: {balance}; {left}; {overshoot}.";
    }

    private static string Both(double moisture)
    {
        var content = MoistureContent.FromFraction(Math.Max(0, moisture));
        return Invariant($"{content.PercentDry:0.0} % dry basis ({content.PercentWet:0.0} % wet basis)");
    }

    private string Time(double hours) => IsMicrowave ? Invariant($"{60 * hours:0.#} min") : Invariant($"{hours:0.#} h");
}
