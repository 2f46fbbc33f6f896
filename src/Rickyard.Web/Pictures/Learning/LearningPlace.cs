using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>Where days lie on the page, the same in all panels.</summary>
/// <param name="run">The run.</param>
/// <param name="narrow">For a phone.</param>
internal sealed class LearningPlace(LearningRun run, bool narrow)
{
    /// <summary>For a phone.</summary>
    public bool Narrow => narrow;

    /// <summary>Room for the axis, left of a plot. [px]</summary>
    public double Left => narrow ? 58 : 142;

    /// <summary>Room for names, right of a plot. [px]</summary>
    public double Right => narrow ? 88 : 120;

    /// <summary>Most ticks of the calendar.</summary>
    public int MostTicks => narrow ? 6 : 13;

    /// <summary>The plot in a box.</summary>
    /// <param name="box">The whole.</param>
    /// <param name="head">Room above the plot. [px]</param>
    /// <param name="foot">Room below. [px]</param>
    public Box Plot(Box box, double head, double foot) => new(box.Left + Left, box.Top + head, box.Width - Left - Right, box.Height - head - foot);

    /// <summary>Place of a day. [px]</summary>
    public double X(Box plot, double day) => plot.Left + plot.Width * day / Math.Max(run.Days[^1], 1e-9);

    /// <summary>Days and values up to today, and from today on, both with the value of today.</summary>
    public (IReadOnlyList<Point> Past, IReadOnlyList<Point> Future) Split(Box plot, IReadOnlyList<double> values, Func<double, double> y)
    {
        var all = run.Days.Select((day, i) => (Day: day, At: new Point(X(plot, day), y(values[i])))).ToList();
        var today = new Point(X(plot, run.Today), y(LearningWords.At(run, values, run.Today)));
        return ([.. all.Where(one => one.Day < run.Today).Select(one => one.At), today], [today, .. all.Where(one => one.Day > run.Today).Select(one => one.At)]);
    }
}
