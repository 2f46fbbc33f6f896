using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Testing.Cases;

namespace Rickyard.Testing.Planning;

/// <summary>Answers about sizes that no solver made: the time goes as the width to the power 1.7, and the members differ evenly.</summary>
public static class InventedSizes
{
    private const double Exponent = 1.7;

    /// <summary>An answer.</summary>
    /// <param name="drying">Its case.</param>
    /// <param name="request">The question.</param>
    /// <param name="tau">Days until the middle member of 10 cm is ready. [d]</param>
    public static SizeAnswer Answer(DryingCase drying, SizeRequest request, double tau = 100)
    {
        SizeTrial[] all = [.. SizeSteps.Fine.Select(width => Trial(width, request, tau))];
        var passing = all.Where(trial => trial.ChanceBy(request.NeededDays) >= request.Confidence).ToArray();
        var near = passing.Length;
        return new()
        {
            Case = drying,
            Request = request,
            Largest = near > 0 ? passing[^1].Width : null,
            Trials = [.. all.Where((trial, i) => i == 0 || Math.Abs(i - near) <= 2 || Math.Abs(trial.Width - SplitWidth.Across(drying.Split)) < 0.0026)],
            Run = InventedRun.Of(drying with { Days = 1.25 * request.NeededDays, ReportEvery = request.NeededDays / 40 }, 0.12, request.NeededDays / 2.5),
            Seconds = 0.1,
        };
    }

    /// <summary>A chart: summer dries four times as fast as winter.</summary>
    public static SizeCalendar Calendar(DryingCase drying, SizeCalendarRequest request) => new()
    {
        Case = drying,
        Request = request,
        Starts = [.. Enumerable.Range(1, 12).Select(month => new LocalDate(2026, month, 1))],
        Widths = [.. Enumerable.Range(1, 12).Select(month => (IReadOnlyList<double?>)[.. request.Spans.Select(span => Widest(month, span))])],
        ModelVersion = "invented-1",
        Seconds = 0.1,
    };

    private static double? Widest(int month, int span)
    {
        var drying = Enumerable.Range(month - 1, span).Sum(at => 1 - 0.6 * Math.Cos(2 * Math.PI * (at % 12) / 12));
        var width = 0.1 * Math.Pow(drying / 9, 1 / Exponent) * (span > 20 && month == 6 ? 3 : 1);
        return SizeSteps.Coarse.Where(size => size <= width).Select(size => (double?)size).LastOrDefault();
    }

    private static SizeTrial Trial(double width, SizeRequest request, double tau) => new(width,
        [.. Enumerable.Range(0, request.Members).Select(member => tau * Math.Pow(width / 0.1, Exponent) * (0.7 + 0.6 * (member + 0.5) / request.Members)).Select(day => day <= 1.25 * request.NeededDays ? day : double.PositiveInfinity)]);
}
