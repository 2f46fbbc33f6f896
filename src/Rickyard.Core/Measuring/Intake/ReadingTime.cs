using NodaTime;
using NodaTime.Text;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>When a reading was taken.</summary>
/// <param name="Day">From the start of the case; a date alone means noon. [d]</param>
/// <param name="Words">"3 May 2026" or "3 May 2026, 10:30".</param>
internal sealed record ReadingTime(double Day, string Words)
{
    /// <summary>A run that ends at noon may be a rounding short of it. [d]</summary>
    private const double Rounding = 1e-6;

    private const string Wanted = "Give year-month-day, such as 2026-05-03, or with the hour in local standard time, such as 2026-05-03 10:30.";

    private static readonly LocalDatePattern Iso = LocalDatePattern.Iso;
    private static readonly LocalDatePattern Spoken = LocalDatePattern.CreateWithInvariantCulture("d MMMM uuuu");
    private static readonly LocalDateTimePattern SpokenHour = LocalDateTimePattern.CreateWithInvariantCulture("d MMMM uuuu', 'HH':'mm");

    /// <summary>The time, or null with what is wrong told.</summary>
    public static ReadingTime? Read(GivenReading given, IntakeLot lot, RowFaults faults)
    {
        if (Stamp(given[ReadingColumns.Date], faults) is not { } stamp) return null;
        var at = stamp.HasClock ? stamp.Local : stamp.Local.PlusHours(12);
        var time = new ReadingTime(NodaTime.Period.Between(lot.Start, at, PeriodUnits.Minutes).Minutes / 1440.0, stamp.HasClock ? SpokenHour.Format(at) : Spoken.Format(at.Date));
        return IsWithin(time, at, lot, faults) ? time : null;
    }

    private static TimeStamp? Stamp(string text, RowFaults faults)
    {
        var echo = Echo.Of(text);
        if (text.Length == 0) return Wrong("The date is missing.", Wanted);
        if (TimeStamp.Slashes(text) is not null) return Wrong($"{echo} may have the day or the month first.", Wanted);
        if (TimeStamp.Parse(text, monthFirst: false) is not { } stamp) return Wrong($"{echo} is not a day of the calendar, with or without an hour.", Wanted);
        return stamp.UtcOffsetHours is null ? stamp : Wrong($"{echo} gives a time zone or an offset from UTC.", "Give the local standard time of the yard (no summer time) and leave the offset out, such as 2026-05-03 10:30.");

        TimeStamp? Wrong(string what, string toDo)
        {
            faults.Wrong(ReadingColumns.Date, what, toDo);
            return null;
        }
    }

    private static bool IsWithin(ReadingTime time, LocalDateTime at, IntakeLot lot, RowFaults faults)
    {
        if (time.Day < 0) faults.Wrong(ReadingColumns.Date, $"{time.Words} is before the lot of the case existed: it starts on {Spoken.Format(lot.Start.Date)}.", "Check the year, or \"at\" in the \"start\" of the case.");
        else if (at.Date > lot.Today) faults.Wrong(ReadingColumns.Date, $"{time.Words} is in the future: today is {Spoken.Format(lot.Today.Value)}.", "Check the year and the month.");
        else if (time.Day > lot.Days + Rounding) faults.Wrong(ReadingColumns.Date, $"{time.Words} is after the run of the case, which ends on {Spoken.Format(lot.Start.PlusDays((int)lot.Days).Date)}.", "Check the year, or let the case run longer (\"run\", \"for\").");
        else return true;
        return false;
    }

    /// <summary>How a table writes a day of a case.</summary>
    /// <param name="start">The first day of the case.</param>
    /// <param name="day">[d]</param>
    public static string Written(LocalDate start, double day)
    {
        var at = start.AtMidnight().PlusMinutes((long)Math.Round(1440 * day));
        return at.TimeOfDay == LocalTime.Noon ? Iso.Format(at.Date) : LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm").Format(at);
    }
}
