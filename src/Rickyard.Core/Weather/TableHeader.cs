namespace Rickyard.Core.Weather;

/// <summary>The header line of a table of weather, with the role of each column that we use.</summary>
internal sealed class TableHeader
{
    private readonly Dictionary<ColumnRole, WeatherColumn> _columns = [];

    private TableHeader(char separator, WeatherColumn[] columns)
    {
        Separator = separator;
        Columns = columns;
        foreach (var role in Enum.GetValues<ColumnRole>())
        {
            var best = columns.Where(column => ColumnNames.Rank(role, column.Name) is not null).MinBy(column => ColumnNames.Rank(role, column.Name));
            if (best is not null) _columns[role] = best;
        }

        if (this[ColumnRole.Clock]?.Index == this[ColumnRole.Time]?.Index) _columns.Remove(ColumnRole.Clock);
        Layout = KnownLayout.Of([.. columns.Select(column => column.Name)]);
    }

    public char Separator { get; }

    public WeatherColumn[] Columns { get; }

    public KnownLayout? Layout { get; }

    public WeatherColumn? this[ColumnRole role] => _columns.GetValueOrDefault(role);

    /// <summary>Year, month and day stand in columns of their own.</summary>
    public bool DateInColumns => this[ColumnRole.Year] is not null && this[ColumnRole.Month] is not null && this[ColumnRole.Day] is not null;

    public bool HasTime => DateInColumns || this[ColumnRole.Time] is not null;

    /// <summary>Highs and lows, and no temperature of the hour.</summary>
    public bool Daily => this[ColumnRole.High] is not null && this[ColumnRole.Low] is not null && this[ColumnRole.Temperature] is null;

    /// <summary>A line that names times and temperatures.</summary>
    public bool Useful => HasTime && (this[ColumnRole.Temperature] is not null || Daily);

    public static TableHeader Parse(string line)
    {
        var separator = DelimitedLine.SeparatorOf(line);
        return new(separator, [.. DelimitedLine.Split(line, separator).Select(Column)]);
    }

    /// <summary>The unit of a column: as its header says, else as the layout is documented.</summary>
    public string? UnitOf(ColumnRole role) => this[role]?.Unit ?? Layout?.Units.GetValueOrDefault(role);

    private static WeatherColumn Column(string header, int index)
    {
        var (name, unit) = ColumnNames.Parse(header);
        return new(index, header, name, unit);
    }
}
