namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>Whether a log is made as the published practice asks (state treatment protocol for T314-a as posted by a supplier; text).</summary>
/// <param name="WoodSensors">Sensors in wood.</param>
/// <param name="AirSensors">Sensors in the air.</param>
/// <param name="LongestGap">Longest time between two whole readings. [s]</param>
/// <param name="Accuracy">Of the sensors, as stated by the user. [K]</param>
public sealed record LogFitness(int WoodSensors, int AirSensors, double LongestGap, double Accuracy)
{
    /// <summary>Sensors in wood asked for.</summary>
    public const int LeastWoodSensors = 3;

    /// <summary>Accuracy asked for, at treatment temperature. [K]</summary>
    public const double WorstAccuracy = 0.5;

    /// <summary>At least three in wood; they belong in the larger pieces.</summary>
    public bool HasEnoughSensors => WoodSensors >= LeastWoodSensors;

    /// <summary>At least one in the air of the box.</summary>
    public bool HasAirSensor => AirSensors >= 1;

    /// <summary>A whole reading at least every five minutes from first to last.</summary>
    public bool IsOftenEnough => LongestGap <= HoldSearch.LongestGap;

    /// <summary>±0.5 °C or better.</summary>
    public bool IsExactEnough => Accuracy <= WorstAccuracy;

    /// <summary>All of it.</summary>
    public bool IsFit => HasEnoughSensors && HasAirSensor && IsOftenEnough && IsExactEnough;

    /// <summary>That of a log.</summary>
    /// <param name="log">The log.</param>
    /// <param name="accuracy">Of its sensors. [K]</param>
    internal static LogFitness Of(CoreLog log, double accuracy)
    {
        double[] whole = [log.Seconds[0], .. Enumerable.Range(0, log.Seconds.Length).Where(reading => !double.IsNaN(log.Coldest(reading))).Select(reading => log.Seconds[reading]), log.Seconds[^1]];
        return new(log.Sensors.Count, log.AirSensors.Count, whole.Skip(1).Zip(whole, (later, earlier) => later - earlier).Max(), accuracy);
    }
}
