namespace Rickyard.Web.Pictures.Chart;

/// <summary>An even axis that begins and ends at round numbers.</summary>
/// <param name="From">Its lower end.</param>
/// <param name="To">Its upper end.</param>
/// <param name="Step">From tick to tick.</param>
internal sealed record EvenAxis(double From, double To, double Step)
{
    private static readonly double[] Round = [1, 2, 5, 10];

    /// <summary>One that holds all values with some room, from 0 where that costs little.</summary>
    /// <param name="values">At least one.</param>
    /// <param name="most">Most steps.</param>
    public static EvenAxis Over(IReadOnlyCollection<double> values, int most)
    {
        double low = values.Min(), high = values.Max(), room = Math.Max(0.12 * (high - low), 0.1 * Math.Abs(high) + 1e-3);
        if (low - room < 0.45 * high) low = room;
        var step = StepFor((high - low + 2 * room) / most);
        return new(Math.Max(0, step * Math.Floor((low - room) / step)), step * Math.Ceiling((high + room) / step), step);
    }

    /// <summary>Every tick.</summary>
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((To - From) / Step) + 1).Select(tick => From + tick * Step);

    /// <summary>Place of a value, 0 to 1 along the axis.</summary>
    public double Place(double value) => (value - From) / (To - From);

    /// <summary>Whether it holds a value.</summary>
    public bool Holds(double value) => value >= From && value <= To;

    /// <summary>A tick as it is written.</summary>
    public string Write(double tick) => Step >= 1 ? FormattableString.Invariant($"{tick:0}") : FormattableString.Invariant($"{tick:0.###}");

    private static double StepFor(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return power * Round.First(round => power * round >= least * (1 - 1e-9));
    }
}
