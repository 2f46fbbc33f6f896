using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace Rickyard.Web.Pictures;

/// <summary>Dates as they are written in a picture, kept on one line by no-break spaces.</summary>
internal static class CalendarWords
{
    private static readonly LocalDatePattern Whole = LocalDatePattern.Create("d\u00a0MMM\u00a0uuuu", CultureInfo.InvariantCulture);
    private static readonly LocalDatePattern Short = LocalDatePattern.Create("d\u00a0MMM", CultureInfo.InvariantCulture);
    private static readonly LocalDatePattern Months = LocalDatePattern.Create("MMM", CultureInfo.InvariantCulture);

    /// <summary>Day, month and year.</summary>
    public static string Date(LocalDate date) => Whole.Format(date);

    /// <summary>Day and month.</summary>
    public static string DayAndMonth(LocalDate date) => Short.Format(date);

    /// <summary>Month alone.</summary>
    public static string Month(LocalDate date) => Months.Format(date);

    /// <summary>Two dates, the year once if it is the same.</summary>
    public static string Range(LocalDate from, LocalDate to) => $"{(from.Year == to.Year ? DayAndMonth(from) : Date(from))} to {Date(to)}";

    /// <summary>The calendar day some days after a start.</summary>
    public static LocalDate After(LocalDate start, double days) => start.PlusDays((int)Math.Floor(days + 1e-9));
}
