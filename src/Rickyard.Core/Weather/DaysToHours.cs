using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Spreads days over their hours: temperature by <see cref="DayShape"/> about a line through the noons, so that nothing jumps at midnight.</summary>
internal static class DaysToHours
{
    /// <summary>The hours of a run of days.</summary>
    /// <param name="first">Date of the first day.</param>
    /// <param name="days">At least one.</param>
    /// <param name="latitude">For the course of the sun. [°]</param>
    /// <param name="pressure">Station pressure. [Pa]</param>
    public static WeatherHour[] Spread(LocalDate first, IReadOnlyList<SyntheticDay> days, double latitude, double pressure)
    {
        var hours = new WeatherHour[24 * days.Count];
        Span<double> celsius = stackalloc double[24];
        for (var day = 0; day < days.Count; day++)
        {
            for (var hour = 0; hour < 24; hour++) celsius[hour] = Temperature(days, day, hour);
            var vapor = DayShape.VaporPressure(celsius, days[day].RelativeHumidity);
            var date = TypicalCalendar.DayOf(first.PlusDays(day));
            for (var hour = 0; hour < 24; hour++)
            {
                hours[24 * day + hour] = new(
                    celsius[hour],
                    DayShape.RelativeHumidity(celsius[hour], vapor),
                    days[day].WindSpeed * DayShape.WindAt(hour),
                    days[day].Sun * DailySun.HourFactor(latitude, date, hour),
                    days[day].Rain[hour],
                    pressure);
            }
        }

        return hours;
    }

    private static double Temperature(IReadOnlyList<SyntheticDay> days, int day, int hour)
    {
        var other = Math.Clamp(hour < 12 ? day - 1 : day + 1, 0, days.Count - 1);
        var share = Math.Abs(hour + 1 - 12) / 24.0;
        var mean = (1 - share) * days[day].MeanCelsius + share * days[other].MeanCelsius;
        return mean + days[day].RangeKelvins * DayShape.TemperatureAt(hour);
    }
}
