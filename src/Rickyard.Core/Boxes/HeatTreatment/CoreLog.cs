namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>Temperatures inside the wood of one batch against time, from sensors or predicted.</summary>
public sealed record CoreLog
{
    /// <summary>Sensors in wood, by the names of their columns; of a prediction, the classes of splits.</summary>
    public required IReadOnlyList<string> Sensors { get; init; }

    /// <summary>Sensors in the air of the box, which are noted but count for no core.</summary>
    public IReadOnlyList<string> AirSensors { get; init; } = [];

    /// <summary>Times of the readings from the first one, rising. [s]</summary>
    public required double[] Seconds { get; init; }

    /// <summary>The times as the log writes them, for people.</summary>
    public required IReadOnlyList<string> Stamps { get; init; }

    /// <summary>Readings of each sensor in wood along the times; NaN where there is none. [°C]</summary>
    public required IReadOnlyList<double[]> Celsius { get; init; }

    /// <summary>Whether it was computed instead of measured.</summary>
    public bool IsPredicted { get; init; }

    /// <summary>What was left out or taken in some way, each a sentence.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Reading of the coldest sensor at a time; NaN where any sensor has none, since that one may be the coldest. [°C]</summary>
    /// <param name="reading">Number of the reading.</param>
    public double Coldest(int reading)
    {
        var coldest = double.PositiveInfinity;
        foreach (var sensor in Celsius) coldest = Math.Min(coldest, sensor[reading]);
        return coldest;
    }

    /// <summary>Number of the sensor that is coldest at a time; one without a reading counts as coldest.</summary>
    /// <param name="reading">Number of the reading.</param>
    public int ColdestSensor(int reading) => Enumerable.Range(0, Celsius.Count).MinBy(sensor => double.IsNaN(Celsius[sensor][reading]) ? double.NegativeInfinity : Celsius[sensor][reading]);
}
