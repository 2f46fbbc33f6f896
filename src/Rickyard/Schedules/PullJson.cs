using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using Rickyard.HotBox;
using Rickyard.Web.Pictures.Schedules;

namespace Rickyard.Schedules;

/// <summary>The pull list as JSON, in the order of the charge.</summary>
internal static class PullJson
{
    public static void Write(Utf8JsonWriter json, ScheduleAnswer answer, RunClock clock)
    {
        json.WriteStartArray("pull_list");
        foreach (var pull in answer.Best.Classes)
        {
            json.WriteStartObject();
            One(json, answer, pull, clock);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Number("charge_mass_at_loading_kg", answer.Best.Classes.Sum(pull => Pieces(answer, pull) * pull.MassAtLoading), 2);
        json.Number("charge_mass_at_pull_kg", answer.Best.Classes.Sum(pull => Pieces(answer, pull) * pull.MassAtPull), 2);
    }

    private static void One(Utf8JsonWriter json, ScheduleAnswer answer, ClassPull pull, RunClock clock)
    {
        var one = ScheduleWords.ClassOf(answer, pull);
        json.WriteString("name", one.Name);
        json.WriteString("species", one.Wood.Species.CommonName);
        json.WriteString("split", one.Wood.Split.Describe());
        json.WriteNumber("pieces", one.Pieces);
        json.WriteString("shelf", StageWords.Of(one.Shelf));
        json.Number("pull_day", pull.PullDay, 3);
        if (clock.IsDated) json.WriteString("pull_date", pull.PullDay is { } day ? clock.Iso(day) : null);
        json.Number("rest_days", pull.RestDays, 3);
        json.Number("ready_day", pull.PullDay + pull.RestDays, 3);
        json.Number("mass_at_loading_kg", pull.MassAtLoading, 4);
        json.Number("mass_at_pull_kg", pull.MassAtPull, 4);
        json.Number("class_mass_at_pull_kg", one.Pieces * pull.MassAtPull, 2);
        json.Number("mean_at_pull_pct_dry", 100 * pull.MeanAtPull, 3);
        json.Number("core_at_pull_pct_dry", 100 * pull.CoreAtPull, 3);
        json.Number("shell_at_pull_pct_dry", 100 * pull.ShellAtPull, 3);
        json.Number("mean_pct_dry", 100 * pull.Mean, 3);
        json.Number("core_pct_dry", 100 * pull.Core, 3);
        json.Number("shell_pct_dry", 100 * pull.Shell, 3);
        json.Number("gap_points", 100 * pull.Gap, 2);
    }

    private static int Pieces(ScheduleAnswer answer, ClassPull pull) => ScheduleWords.ClassOf(answer, pull).Pieces;
}
