using MathNet.Numerics.Random;

namespace Rickyard.Core.Weather;

/// <summary>
/// Wet and dry days as a chain of two states (Richardson 1981), with exponential depths that fall in 3 to 5 hours on end (physics.md,
/// eq. M4). Over many years months keep their rain and their wet days; a single month does not.
/// </summary>
internal sealed class WetDayChain
{
    /// <summary>Share of the way from p to 1 that a wet day lifts the chance of the next.</summary>
    private const double Persistence = 0.25;

    private readonly MonthlyNormals _normals;
    private readonly Xoshiro256StarStar _random;
    private bool? _wetYesterday;

    public WetDayChain(MonthlyNormals normals, int seed)
    {
        if (!normals.RainKnown) throw new ArgumentException($"{normals.Name} has no rain in its normals.", nameof(normals));
        _normals = normals;
        _random = new(seed);
    }

    /// <summary>Share of wet days in a month.</summary>
    /// <param name="month">0 to 11.</param>
    public double WetShare(int month) => Math.Clamp(_normals.Months[month].WetDays!.Value / TypicalCalendar.DaysIn(month), 0, 1);

    /// <summary>Draws the next day. [mm in each of 24 hours]</summary>
    /// <param name="month">0 to 11.</param>
    /// <returns>The hours; all zero on a dry day.</returns>
    public double[] NextDay(int month)
    {
        var hours = new double[24];
        if (!NextIsWet(month)) return hours;
        var mean = _normals.Months[month].Rain!.Value / _normals.Months[month].WetDays!.Value;
        var depth = -mean * Math.Log(1 - _random.NextDouble());
        var length = _random.Next(3, 6);
        var first = _random.Next(0, 25 - length);
        hours.AsSpan(first, length).Fill(depth / length);
        return hours;
    }

    private bool NextIsWet(int month)
    {
        var p = WetShare(month);
        var chance = _wetYesterday switch { null => p, true => p + Persistence * (1 - p), false => (1 - Persistence) * p };
        _wetYesterday = _random.NextDouble() < chance;
        return _wetYesterday.Value;
    }
}
