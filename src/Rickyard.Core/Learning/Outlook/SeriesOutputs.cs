using Rickyard.Core.Learning.StandIns;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Numbers of the outputs that make the curves of a forecast, by report.</summary>
/// <param name="Days">Report times. [d]</param>
/// <param name="Core">Core.</param>
/// <param name="Mean">Mean.</param>
/// <param name="Shell">Shell.</param>
/// <param name="End">End.</param>
/// <param name="Mass">Mass.</param>
/// <param name="DryMass">Oven-dry mass.</param>
internal sealed record SeriesOutputs(double[] Days, int[] Core, int[] Mean, int[] Shell, int[] End, int[] Mass, int[] DryMass)
{
    /// <summary>Ask for them.</summary>
    internal static SeriesOutputs Ask(OutputTable table, double[] days)
    {
        int[] Each(Sensor sensor) => [.. days.Select(day => table.Ask(day, sensor))];
        return new(days, Each(Sensor.Core), Each(Sensor.Mean), Each(Sensor.Shell), Each(Sensor.End), Each(Sensor.Mass), Each(Sensor.DryMass));
    }
}
