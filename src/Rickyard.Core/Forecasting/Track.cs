namespace Rickyard.Core.Forecasting;

/// <summary>One member's readings at every report time, as they come in.</summary>
internal sealed class Track(int reports)
{
    internal double[] Mean { get; } = new double[reports];

    internal double[] Core { get; } = new double[reports];

    internal double[] Shell { get; } = new double[reports];

    internal double[] End { get; } = new double[reports];

    internal double[] Celsius { get; } = new double[reports];

    internal double[] Mass { get; } = new double[reports];

    internal double[] OutsideShare { get; } = new double[reports];

    /// <summary>Part of the start mass lost; a further split counts the pieces of one parent together.</summary>
    internal double[] Loss { get; } = new double[reports];

    internal void Set(int report, in Drying.SplitReading reading, double loss)
    {
        (Mean[report], Core[report], Shell[report], End[report]) = (reading.Mean, reading.Core, reading.Shell, reading.End);
        (Celsius[report], Mass[report], OutsideShare[report], Loss[report]) = (reading.Celsius, reading.Mass, reading.OutsideShare, loss);
    }
}
