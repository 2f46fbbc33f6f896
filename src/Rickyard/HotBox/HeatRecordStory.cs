using Rickyard.Core.Boxes.HeatTreatment;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>A heat treatment record in plain words: what was held, when, by which core, how the log was made, and what none of it is.</summary>
internal static class HeatRecordStory
{
    /// <summary>What a record is not; said with every record, in words and in JSON.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "A home batch is not certified, whatever this log shows: only a certified facility may call wood certified heat treated.",
        "Rules on moving firewood are local and often change: ask where the wood comes from and where it goes before moving it.",
        "Drying and heat treatment are different goals: wood can be treated while wet, and dry wood may never have been hot enough in its core.",
        "Keep treated wood apart from untreated wood and covered, or it can be infested again; keep the log with it at least 30 days.",
    ];

    public static void Tell(HeatRecord record, Screen screen)
    {
        screen.Paragraph(Answer(record));
        screen.Gap();
        screen.Bullets(record.Findings.Select(finding => Sentence(record, finding)));
        screen.Gap();
        screen.Paragraph(record.Log.IsPredicted ? "This is a forecast of the slowest core of each class, one value a minute, to plan by. It is no record: published heating times are met within about 10 % as a rule and a quarter at worst." : Fitness(record));
        if (!record.Log.IsPredicted) screen.Bullets(Shortcomings(record.Fitness));
        if (record.Log.Notes.Count > 0) screen.Bullets(record.Log.Notes);
        screen.Gap();
        screen.Bullets(Cautions);
    }

    /// <summary>What the log lacks of published practice; empty where it lacks nothing.</summary>
    public static IEnumerable<string> Shortcomings(LogFitness fitness)
    {
        if (!fitness.HasEnoughSensors) yield return Invariant($"{Cores(fitness.WoodSensors)} in wood; practice asks for at least {LogFitness.LeastWoodSensors}, in the larger pieces.");
        if (!fitness.HasAirSensor) yield return "No sensor in the air of the box; practice asks for one (name its column air).";
        if (!fitness.IsOftenEnough) yield return Invariant($"Up to {fitness.LongestGap / 60:0.#} min between whole readings; practice asks for one at least every 5 min, and a longer gap breaks a hold.");
        if (!fitness.IsExactEnough) yield return Invariant($"Sensors of ±{fitness.Accuracy:0.0##} K; practice asks for ±{LogFitness.WorstAccuracy:0.0} K, calibrated.");
    }

    private static string Answer(HeatRecord record)
    {
        var held = record.Findings.Where(finding => finding.IsHeld).Select(finding => Goal(finding.Schedule)).ToList();
        var what = record.Log.IsPredicted ? "would hold" : "held";
        return held.Count > 0 ? $"The coldest core {what} {string.Join(", and ", held)}." : $"The coldest core {what} none of the schedules.";
    }

    private static string Sentence(HeatRecord record, ScheduleFinding finding)
    {
        var head = $"{finding.Schedule.Name}, {Goal(finding.Schedule)} ({finding.Schedule.Use}): ";
        if (finding.Proof is { } proof) return head + Invariant($"held, from {At(record, proof.First)} to {At(record, proof.Last)}, {proof.Minutes:0} min on end; the minutes were full {finding.FullAt / 3600:0.0} h after the first reading. Last to get there: {finding.Slowest}.");
        if (finding.Longest is { } longest) return head + Invariant($"not held. The longest stretch was {longest.Minutes:0} min, from {At(record, longest.First)} to {At(record, longest.Last)}. Last to get there: {finding.Slowest}.");
        return head + (double.IsNaN(finding.Warmest) ? "not held: no reading is whole." : Invariant($"not held. The coldest core read at most {finding.Warmest:0.0} °C{Less(record)}; least warm: {finding.Slowest}."));
    }

    private static string Fitness(HeatRecord record) => Invariant($"{Cores(record.Log.Sensors.Count)} in wood, {record.Log.Seconds.Length} readings; ±{record.Margin:0.0##} K for the accuracy of the sensors is taken off every reading. The log is ")
        + (record.Fitness.IsFit ? "made as published practice asks." : "not made as published practice asks:");

    private static string Less(HeatRecord record) => record.Margin > 0 ? Invariant($", {record.Margin:0.0##} K taken off") : "";

    private static string Cores(int sensors) => sensors == 1 ? "1 sensor" : Invariant($"{sensors} sensors");

    private static string At(HeatRecord record, int reading) => record.Log.Stamps[reading];

    private static string Goal(HeatSchedule schedule) => Invariant($"{schedule.Celsius:0.#} °C for {schedule.Minutes:0} min");
}
