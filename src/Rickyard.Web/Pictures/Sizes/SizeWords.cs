using System.Globalization;
using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Racks;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>What the chart of sizes says in words.</summary>
public static class SizeWords
{
    /// <summary>What it is.</summary>
    public static string Title(SizeCalendar calendar) => $"How wide to split {calendar.Case.Species.CommonName}";

    /// <summary>What a figure in it promises.</summary>
    public static string Promise(SizeCalendar calendar) =>
        $"Split no wider than this, and {WidthWords.Odds(calendar.Request.Confidence)} cores are at or below {Percent(calendar.Request.BandHigh)}\u00a0%\u00a0dry\u00a0basis by the day in the cell.";

    /// <summary>Climate and rack.</summary>
    public static string Place(SizeCalendar calendar)
    {
        var period = (RackPeriod)calendar.Case.Periods[0];
        var climate = period.Weather.NormalsPlace is { } place ? $"Climate of {place} (monthly normals)" : $"Weather of {Path.GetFileName(period.Weather.File)}";
        return $"{climate}. Rack: {Rack(period.Rack)}.";
    }

    /// <summary>The wood at the start and its shape.</summary>
    public static string Wood(SizeCalendar calendar)
    {
        var drying = calendar.Case;
        var start = drying.Start.IsGreen ? Invariant($"Stacked green (about {100 * drying.Start.Core:0}\u00a0%)") : Invariant($"Stacked at {100 * drying.Start.Core:0.#}\u00a0%\u00a0dry\u00a0basis in the core");
        return $"{start}; {Shape(calendar)}.";
    }

    /// <summary>How it is read, what is meant, and how far it is to be trusted.</summary>
    public static string Footnote(SizeCalendar calendar) => string.Join(' ',
        "Find the month in which you stack, then go along to the day you need the wood.",
        "Width: the widest way across the end grain, as drawn above; the pieces in the cells are drawn to one scale. Core: the inner tenth of the piece; shell and ends are drier.",
        Invariant($"\u201cBy\u201d a day: the core has come there by then; a wet spell can lift it a little again. Widths from {100 * SizeSteps.Smallest:0} to {100 * SizeSteps.Largest:0}\u00a0cm were tried; in each cell the next one tried was not ready."),
        Invariant($"A forecast, not a promise: computed from {calendar.Request.Members} runs in weather as it may come, with wood as it may be. Split one and measure before you burn it. Model {calendar.ModelVersion}, seed\u00a0{calendar.Request.Seed}."));

    /// <summary>The day in a cell, seen from the day of stacking.</summary>
    public static string By(LocalDate start, int months)
    {
        var day = start.PlusMonths(months);
        var year = (day.Year - start.Year) switch { 0 => "", 1 => " next year", var years => Invariant($" in {years} years") };
        return $"by {day.ToString("d MMM", CultureInfo.InvariantCulture)}{year}";
    }

    /// <summary>All of it for those who do not see it.</summary>
    public static string Description(SizeCalendar calendar)
    {
        var lines = calendar.Starts.Select((start, row) =>
            $"{start.ToString("MMMM", CultureInfo.InvariantCulture)}: {string.Join(", ", calendar.Request.Spans.Select((months, column) => $"{Cell(calendar.Widths[row][column])} {By(start, months)}"))}");
        return $"{Promise(calendar)} {Place(calendar)} {Wood(calendar)} Stacked on the first of {string.Join("; ", lines)}.";
    }

    /// <summary>A width, or that there is none.</summary>
    internal static string Cell(double? width) => width is not { } known ? "none" : IsLargest(known) ? $"{WidthWords.Centimetres(known)} or more" : WidthWords.Centimetres(known);

    /// <summary>Whether a larger one was not tried.</summary>
    internal static bool IsLargest(double width) => width >= SizeSteps.Largest - 1e-9;

    private static string Percent(double fraction) => Invariant($"{100 * fraction:0.#}");

    private static string Shape(SizeCalendar calendar)
    {
        var split = calendar.Case.Split;
        var bark = !split.IsPolar ? "bare" : split.Bark ? "in bark" : "without bark";
        return Invariant($"pieces {100 * split.Length:0}\u00a0cm ({split.Length / 0.0254:0.#}\u00a0in) long, {bark}, shaped as drawn");
    }

    private static string Rack(RackDescription rack)
    {
        var cover = rack.Cover switch { RackCover.None => "no cover", RackCover.Top => "covered on top", RackCover.Tarp => "tarp over top and sides", _ => "in a shed" };
        var sun = rack.Sun switch { RackSun.Full => "full sun", RackSun.Part => "part sun", _ => "shade" };
        return $"{cover}, {sun}, {(rack.Wind == RackWind.Open ? "open to the wind" : "sheltered")}, {(rack.Rows == 1 ? "one row" : Invariant($"{rack.Rows} rows deep"))}";
    }
}
