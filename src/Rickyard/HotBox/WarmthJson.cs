using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes;

namespace Rickyard.HotBox;

/// <summary>What warmth wins, as JSON.</summary>
internal static class WarmthJson
{
    public static string Write(WarmthQuestion question, WarmthGain gain) => JsonText.Object(json =>
    {
        json.WriteString("split", question.Split.Describe());
        json.Number("start_moisture_pct_dry", 100 * question.StartMoisture, 3);
        json.Number("target_pct_dry", 100 * question.Target, 3);
        json.Number("speed_m_s", question.Speed, 3);
        Side(json, "from", gain.From);
        Side(json, "to", gain.To);
        json.Number("saturation_ratio", gain.SaturationRatio, 3);
        json.Number("vapor_difference_ratio", gain.DeficitRatio, 3);
        json.Number("bound_diffusivity_ratio", gain.BoundRatio, 3);
        json.Number("free_water_ratio", gain.FreeRatio, 3);
        json.Number("core_time_ratio", gain.CoreTimeRatio, 3);
        json.Number("mean_time_ratio", gain.MeanTimeRatio, 3);
        json.Number("kiln_law_time_ratio", gain.KilnLaw, 3);
        json.WriteStartArray("why");
        foreach (var sentence in WarmthStory.Why(gain)) json.WriteStringValue(sentence);
        json.WriteEndArray();
    });

    private static void Side(Utf8JsonWriter json, string name, WarmthSide side)
    {
        json.WriteStartObject(name);
        json.Number("temperature_c", side.Celsius, 3);
        json.Number("relative_humidity_pct", 100 * side.RelativeHumidity, 3);
        json.Number("saturation_pressure_pa", side.SaturationPressure, 1);
        json.Number("vapor_pressure_pa", side.VaporPressure, 1);
        json.Number("emc_pct_dry", 100 * side.Emc, 3);
        json.Number("surface_share_pct", 100 * side.SurfaceShare, 1);
        json.Number("days_to_core", side.DaysToCore, 3);
        json.Number("days_to_mean", side.DaysToMean, 3);
        json.Number("mean_when_core_there_pct_dry", 100 * side.MeanWhenCoreThere, 3);
        json.WriteEndObject();
    }
}
