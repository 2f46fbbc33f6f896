using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.HotBox;

namespace Rickyard.Schedules;

/// <summary>One schedule as members of a JSON object.</summary>
internal static class CandidateJson
{
    public static void Write(Utf8JsonWriter json, ScheduleAnswer answer, ScheduleCandidate candidate)
    {
        json.Number("setting_c", candidate.Celsius, 2);
        json.Number("humidity_limit_pct", 100 * candidate.HumidityLimit, 1);
        json.Number("pull_mean_pct_dry", 100 * candidate.PullMean, 3);
        json.Number("rest_c", candidate.RestCelsius, 2);
        json.Number("days", candidate.Days, 3);
        json.Number("energy_kwh", EnergySentences.Kilowatthours(candidate.EnergyJoules), 2);
        json.Number("cost", EnergyCost.Like(answer.Run.Charge!, candidate.EnergyJoules), 2);
        json.Number("water_kg", candidate.WaterKilograms, 3);
        json.Number("gap_points", 100 * candidate.Gap, 2);
        json.Number("miss_points", 100 * candidate.Miss, 2);
    }
}
