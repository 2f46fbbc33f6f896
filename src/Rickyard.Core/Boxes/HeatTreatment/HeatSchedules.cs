using System.Globalization;
using CsvHelper;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>The heat treatment schedules known here (Data/heat_schedules.csv names their sources).</summary>
public static class HeatSchedules
{
    private const string Resource = "Rickyard.Core.Boxes.HeatTreatment.Data.heat_schedules.csv";

    /// <summary>60 °C for 60 min, 56 °C for 30 min, 71.1 °C for 75 min.</summary>
    public static IReadOnlyList<HeatSchedule> All { get; } = Load();

    private static List<HeatSchedule> Load()
    {
        using var stream = typeof(HeatSchedules).Assembly.GetManifestResourceStream(Resource)!;
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        List<HeatSchedule> schedules = [];
        while (csv.Read()) schedules.Add(new(csv.GetString("schedule"), Number("core_celsius"), Number("minutes"), csv.GetString("use"), csv.GetString("source"), csv.GetString("mark")));
        return schedules;

        double Number(string column) => double.Parse(csv.GetString(column), CultureInfo.InvariantCulture);
    }
}
