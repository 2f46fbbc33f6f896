using NodaTime;
using Rickyard.Core.Cases;

namespace Rickyard.Web.Pictures.Chart;

/// <summary>Days of a run worth a tick on a calendar axis.</summary>
internal static class TimeAxis
{
    private static readonly int[] DaySteps = [1, 2, 7, 14];
    private static readonly int[] MonthSteps = [1, 2, 3, 6, 12, 24, 60, 120];

    /// <summary>Ticks from a start, no more than a given number: whole days, or firsts of months with the year under the first and each January; numbers of days where the start has no date.</summary>
    public static IReadOnlyList<TimeTick> Ticks(CaseStart from, double days, int most)
    {
        if (!from.IsDated) return [.. ByNumber(days, most)];
        var start = from.At;
        var step = DaySteps.FirstOrDefault(step => days / step < most);
        if (step > 0) return [.. ByDays(start, days, step)];
        var months = MonthSteps.FirstOrDefault(step => days / 30.4 / step < most, MonthSteps[^1]);
        return [.. ByMonths(start, days, months)];
    }

    private static IEnumerable<TimeTick> ByNumber(double days, int most)
    {
        var axis = EvenAxis.Over([0, days], most - 1);
        return axis.Ticks.Where(tick => tick <= days).Select(tick => new TimeTick(tick, (tick > 0 ? "" : "day ") + axis.Write(tick), null));
    }

    private static IEnumerable<TimeTick> ByDays(LocalDate start, double days, int step)
    {
        for (var day = 0; day <= days; day += step)
        {
            var date = start.PlusDays(day);
            var newYear = day == 0 || date.Year != date.PlusDays(-step).Year;
            yield return new(day, CalendarWords.DayAndMonth(date), newYear ? Year(date) : null);
        }
    }

    private static IEnumerable<TimeTick> ByMonths(LocalDate start, double days, int step)
    {
        var date = new LocalDate(start.Year, 1, 1);
        var previous = 0;
        for (; Days(start, date) <= days; date = date.PlusMonths(step))
        {
            if (Days(start, date) < 0) continue;
            yield return new(Days(start, date), CalendarWords.Month(date), date.Year != previous ? Year(date) : null);
            previous = date.Year;
        }
    }

    private static int Days(LocalDate start, LocalDate date) => NodaTime.Period.DaysBetween(start, date);

    private static string Year(LocalDate date) => FormattableString.Invariant($"{date.Year}");
}
