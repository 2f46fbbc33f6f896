using Rickyard.Core.Tables;

namespace Rickyard.Core.Verification;

/// <summary>Something measured in the world that the engine can be run on: one observable of one source.</summary>
/// <param name="Id">Number of the case; several observables may share it.</param>
/// <param name="Part">Which observable, or empty.</param>
/// <param name="Kind">Indoor, air, heated, heating or law.</param>
/// <param name="Species">The wood, by its name here.</param>
/// <param name="Geometry">The pieces, as printed.</param>
/// <param name="Place">Where, as printed.</param>
/// <param name="Start">When it began, as printed.</param>
/// <param name="End">When it ended, as printed.</param>
/// <param name="Observable">What was measured, in words.</param>
/// <param name="Reading">The same of a run.</param>
/// <param name="Day">Day of the reading from the start, or null. [d]</param>
/// <param name="Low">Lowest measured value; null where only an upper bound is known. [unit]</param>
/// <param name="Middle">Mean or only measured value; null for an upper bound. [unit]</param>
/// <param name="High">Highest measured value. [unit]</param>
/// <param name="Unit">Unit of the measured value: % of start mass, % dry basis, days or ratio.</param>
/// <param name="Rank">How far the source can be trusted.</param>
/// <param name="Source">Who printed it.</param>
/// <param name="Mark">Table, text or derived.</param>
/// <param name="Assumed">What had to be assumed because the source is silent.</param>
public sealed record MeasuredCase(
    string Id, string Part, string Kind, string Species, string Geometry, string Place, string Start, string End, string Observable, CaseReading Reading,
    double? Day, double? Low, double? Middle, double High, string Unit, string Rank, string Source, string Mark, string Assumed)
{
    /// <summary>Number and part.</summary>
    public string Name => Part.Length > 0 ? $"{Id} {Part}" : Id;

    /// <summary>States too little to be scored; reported all the same.</summary>
    public bool IsStressTest => Rank == "stress test";

    /// <summary>Measured in percent, so that a miss is in percentage points.</summary>
    public bool IsInPoints => Reading is CaseReading.Loss or CaseReading.Mean;

    /// <summary>Distance of a value from the measured range, 0 inside. [unit]</summary>
    public double FromRange(double value) => value > High ? value - High : value < Low ? Low.Value - value : 0;

    /// <summary>Distance of a value from the middle, or from the bound where there is no middle. [unit]</summary>
    public double FromMiddle(double value) => Middle is { } middle ? Math.Abs(value - middle) : FromRange(value);

    internal static MeasuredCase Of(DataRow row) => new(
        row.Text("id"), row.Text("part"), row.Text("kind"), row.Text("species"), row.Text("geometry"), row.Text("place"), row.Text("start"), row.Text("end"),
        row.Text("observable"), row.Choice<CaseReading>("reading"), row.NumberOrNull("day"), row.NumberOrNull("low"), row.NumberOrNull("middle"),
        row.Number("high"), row.Text("unit"), row.Text("rank"), row.Text("source"), row.Text("mark"), row.Text("assumed"));
}
