using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>The calendar of a typical year: 365 days; 29 February is the 28th once more.</summary>
internal static class TypicalCalendar
{
    /// <summary>Days of a typical year.</summary>
    public const int Days = 365;

    /// <summary>Hours of a typical year.</summary>
    public const int Hours = 24 * Days;

    /// <summary>Calendar year written on a typical year; it means nothing.</summary>
    public const int NominalYear = 2001;

    /// <summary>Start written on a typical year.</summary>
    public static LocalDateTime NominalStart { get; } = new(NominalYear, 1, 1, 0, 0);

    /// <summary>Day of the typical year, 0 to 364.</summary>
    public static int DayOf(LocalDate date) => new LocalDate(NominalYear, date.Month, date is { Month: 2, Day: 29 } ? 28 : date.Day).DayOfYear - 1;

    /// <summary>Month 0 to 11 of a day of the typical year.</summary>
    public static int MonthOf(int day) => new LocalDate(NominalYear, 1, 1).PlusDays(day).Month - 1;

    /// <summary>Days of a month of the typical year.</summary>
    /// <param name="month">0 to 11.</param>
    public static int DaysIn(int month) => CalendarSystem.Iso.GetDaysInMonth(NominalYear, month + 1);

    /// <summary>Index of the hour that begins at the given time, 0 to 8759.</summary>
    public static int IndexOf(LocalDateTime start) => 24 * DayOf(start.Date) + start.Hour;
}
