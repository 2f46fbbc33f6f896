using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>The header line of a temperature log: the first line that names a time and a core temperature.</summary>
/// <param name="Index">Number of the line, from 0.</param>
/// <param name="Separator">What parts its fields.</param>
/// <param name="Columns">All of them.</param>
internal sealed record LogHeader(int Index, char Separator, LogColumn[] Columns)
{
    private const int LinesSearched = 80;

    public LogColumn[] Wood => [.. Columns.Where(column => column.Kind == LogColumnKind.Wood)];

    public LogColumn[] Air => [.. Columns.Where(column => column.Kind == LogColumnKind.Air)];

    public LogColumn? Of(LogColumnKind kind) => Array.Find(Columns, column => column.Kind == kind);

    private bool IsUseful => (Of(LogColumnKind.Elapsed) ?? Of(LogColumnKind.Clock) ?? Of(LogColumnKind.Date)) is not null && Wood.Length > 0;

    public static LogHeader? Find(string[] lines) =>
        Enumerable.Range(0, Math.Min(lines.Length, LinesSearched)).Select(index => Parse(lines[index], index)).FirstOrDefault(header => header.IsUseful);

    private static LogHeader Parse(string line, int index)
    {
        var separator = DelimitedLine.SeparatorOf(line);
        return new(index, separator, [.. DelimitedLine.Split(line, separator).Select(LogColumn.Parse)]);
    }
}
