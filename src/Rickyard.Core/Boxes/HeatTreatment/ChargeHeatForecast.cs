using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>Predicts the core temperatures of a whole charge from its case: the box is run first, and each class is then heated in the air it met there.</summary>
public static class ChargeHeatForecast
{
    /// <summary>Longest log, by which the cores of any charge follow their air. [d]</summary>
    public const double LongestDays = 5;

    /// <summary>The log, one core a class.</summary>
    /// <param name="drying">A case whose only period is a box.</param>
    /// <param name="weather">The weather the case names.</param>
    /// <param name="cancellation">Stops it.</param>
    public static Result<CoreLog> Run(DryingCase drying, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, CancellationToken cancellation)
    {
        if (drying.Periods is not [BoxPeriod box]) return ResultOf.Failure<CoreLog>("air", "The case has no hot box.", "Give \"air\": { \"box\": … }, or a log of core temperatures.");
        var days = Math.Min(drying.Days, LongestDays);
        var charge = ChargeForecast.ClassesOf(drying);
        var outside = ChargeForecast.OutsideOf(drying, box.Plan, weather, []);
        var trace = new BoxRun(box.Plan, charge, outside, [0, days], GridResolution.Default, StepControl.Forecast).Run(new HashSet<int>(), cancellation);
        return ResultOf.Success(HeatTreatmentForecast.Run([.. charge.Zip(trace.Air)], outside.Pressure, cancellation));
    }
}
