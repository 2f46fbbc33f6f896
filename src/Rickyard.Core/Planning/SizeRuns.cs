using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Planning;

/// <summary>Runs a case with pieces of one exact width after the other, always with the same members.</summary>
internal sealed class SizeRuns(DryingCase drying, DryingRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, CancellationToken cancellation)
{
    private const double LongestReport = 4, FewestReports = 80;

    /// <summary>Run a width.</summary>
    /// <param name="width">[m]</param>
    /// <param name="days">Length of the run. [d]</param>
    /// <param name="exact">A day that must be a report, so that it can be read off. [d]</param>
    /// <param name="progress">Told the part done; may be null.</param>
    internal DryingRun Run(double width, double days, double exact, IProgress<double>? progress = null)
    {
        return DryingForecast.Run(Sized(drying, width) with { Days = days, ReportEvery = exact / Reports(exact) }, request with { SnapshotDays = [days] }, weather, progress, cancellation);
    }

    /// <summary>Reports up to a day.</summary>
    internal static int Reports(double days) => (int)Math.Ceiling(Math.Max(FewestReports, days / LongestReport));

    /// <summary>The case with every piece of one width: a widest width allowed has no spread.</summary>
    internal static DryingCase Sized(DryingCase drying, double width)
    {
        var sized = drying with { Split = SplitWidth.Resized(drying.Split, width), SizeSpread = 0 };
        return drying.Charge is [var first, ..] ? sized with { Charge = [first with { Wood = Sized(first.Wood, width), Pieces = Pieces(first.Pieces, drying, width) }, .. drying.Charge.Skip(1)] } : sized;
    }

    /// <summary>As much wood in a charge as before, in more or fewer pieces.</summary>
    private static int Pieces(int before, DryingCase drying, double width)
    {
        var factor = width / SplitWidth.Across(drying.Split);
        return (int)Math.Max(1, Math.Round(before / (factor * factor)));
    }
}
