using MathNet.Numerics.Random;
using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>
/// Other years from one typical year: weeks on end are taken from within a fortnight of their date (a moving-block bootstrap, Künsch 1989,
/// from memory; block and reach are judgement). Keeps the course of the seasons and the memory from day to day; spreads less than real years do.
/// </summary>
internal static class TypicalYearResampling
{
    /// <summary>Days taken on end.</summary>
    public const int BlockDays = 7;

    /// <summary>How far from their date a block may be taken. [d]</summary>
    public const int ReachDays = 14;

    /// <summary>Another year.</summary>
    public static HourlyWeather Draw(HourlyWeather typical, int seed, LocalDateTime start, int hours)
    {
        var random = new Xoshiro256StarStar(seed);
        var drawn = new WeatherHour[hours];
        var shift = 0;
        for (var hour = 0; hour < hours; hour++)
        {
            if (hour % (24 * BlockDays) == 0) shift = random.Next(-ReachDays, ReachDays + 1);
            drawn[hour] = typical.Hours[TypicalCalendar.IndexOf(start.PlusHours(hour + 24 * shift))];
        }

        return typical with
        {
            Start = start,
            Hours = drawn,
            Typical = false,
            Notes = [.. typical.Notes, "Weeks of the typical year were shuffled within a fortnight, to stand for other years; real years differ more."],
        };
    }
}
