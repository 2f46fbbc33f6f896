namespace Rickyard.Core.Measuring.Intake;

/// <summary>The columns of a table of readings, which are also the keys of a reading in a case file.</summary>
public static class ReadingColumns
{
    internal const string Date = "date", Piece = "piece", Kind = "kind", Place = "place", Value = "value", Unit = "unit", Scale = "scale", Temperature = "temperature", Note = "note";

    /// <summary>All of them, in the order in which a table is written.</summary>
    public static IReadOnlyList<string> All { get; } = [Date, Piece, Kind, Place, Value, Unit, Scale, Temperature, Note];

    /// <summary>Without these there is nothing to read.</summary>
    internal static IReadOnlyList<string> Needed { get; } = [Date, Kind, Value];
}
