using Rickyard.Core.Tables;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>The heat treatment schedules known here (Data/heat_schedules.csv names their sources).</summary>
public static class HeatSchedules
{
    /// <summary>60 °C for 60 min, 56 °C for 30 min, 71.1 °C for 75 min.</summary>
    public static IReadOnlyList<HeatSchedule> All { get; } =
    [
        .. DataRow.Read("Boxes/HeatTreatment/heat_schedules")
            .Select(row => new HeatSchedule(row.Text("schedule"), row.Number("core_celsius"), row.Number("minutes"), row.Text("use"), row.Text("source"), row.Text("mark"))),
    ];
}
