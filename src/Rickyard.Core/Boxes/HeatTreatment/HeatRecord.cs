namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>
/// What a log of core temperatures says of every schedule. It certifies nothing: only a certified facility may call wood certified (Minnesota Department of
/// Agriculture, heat treatment guide; text).
/// </summary>
/// <param name="Log">The log.</param>
/// <param name="Margin">Taken off every reading. [K]</param>
/// <param name="Findings">One a schedule, in the order of <see cref="HeatSchedules.All"/>.</param>
/// <param name="Fitness">How the log was made; of a prediction it means nothing.</param>
public sealed record HeatRecord(CoreLog Log, double Margin, IReadOnlyList<ScheduleFinding> Findings, LogFitness Fitness)
{
    /// <summary>What a log says, the accuracy of its sensors taken off as margin.</summary>
    /// <param name="log">At least one reading of at least one sensor.</param>
    /// <param name="accuracy">Of its sensors, 0 and up; of a prediction a margin of choice. [K]</param>
    public static HeatRecord Of(CoreLog log, double accuracy) =>
        new(log, accuracy, [.. HeatSchedules.All.Select(schedule => Find(log, schedule, accuracy))], LogFitness.Of(log, accuracy));

    private static ScheduleFinding Find(CoreLog log, HeatSchedule schedule, double margin)
    {
        var holds = HoldSearch.All(log, schedule.Celsius, margin);
        var proof = holds.FirstOrDefault(hold => hold.Minutes >= schedule.Minutes - 1e-6);
        var longest = holds.MaxBy(hold => hold.Minutes);
        return new(schedule, proof, longest, Slowest(log, proof ?? longest), Warmest(log) - margin);
    }

    private static string Slowest(CoreLog log, HeatHold? hold) => log.Sensors[hold is { } held ? log.ColdestSensor(Math.Max(0, held.First - 1)) : LeastWarm(log)];

    private static int LeastWarm(CoreLog log) => Enumerable.Range(0, log.Sensors.Count)
        .MinBy(sensor => log.Celsius[sensor].Where(celsius => !double.IsNaN(celsius)).DefaultIfEmpty(double.NegativeInfinity).Max());

    private static double Warmest(CoreLog log) =>
        Enumerable.Range(0, log.Seconds.Length).Select(log.Coldest).Where(celsius => !double.IsNaN(celsius)).DefaultIfEmpty(double.NaN).Max();
}
