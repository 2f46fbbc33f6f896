using System.Text.Json.Nodes;
using Rickyard.Core.Verification;

namespace Rickyard.Verification;

/// <summary>A verification for machines. Days never reached are null, as JSON has no infinity.</summary>
public static class VerificationJson
{
    /// <summary>The whole report.</summary>
    public static JsonObject Of(VerificationReport report) => new()
    {
        ["model_version"] = report.ModelVersion,
        ["members"] = report.Members,
        ["seed"] = report.Seed,
        ["scored_rows"] = report.Scored.Count,
        ["median_miss_from_range_fraction"] = Finite(report.MedianRelativeMissFromRange),
        ["median_miss_from_middle_fraction"] = Finite(report.MedianRelativeMissFromMiddle),
        ["median_miss_points"] = Finite(report.MedianMissInPoints),
        ["cases"] = new JsonArray([.. report.Rows.Select(Case)]),
        ["drying_law"] = new JsonArray([.. report.DryingLaw.Select(Law)]),
        ["thickness_exponent"] = Finite(report.ThicknessExponent),
        ["time_40_over_80_c"] = Finite(report.TemperatureRatio),
        ["facts"] = new JsonArray([.. report.Beside.Select(Fact)]),
    };

    private static JsonObject Case(VerificationRow row) => new()
    {
        ["id"] = row.Case.Id,
        ["part"] = row.Case.Part,
        ["species"] = row.Case.Species,
        ["observable"] = row.Case.Observable,
        ["unit"] = row.Case.Unit,
        ["rank"] = row.Case.Rank,
        ["scored"] = !row.Case.IsStressTest,
        ["measured_low"] = row.Case.Low,
        ["measured_middle"] = row.Case.Middle,
        ["measured_high"] = row.Case.High,
        ["predicted"] = Finite(row.Predicted.Typical),
        ["predicted_p10"] = Finite(row.Predicted.LowTenth),
        ["predicted_p50"] = Finite(row.Predicted.Median),
        ["predicted_p90"] = Finite(row.Predicted.HighTenth),
        ["miss_from_range"] = Finite(row.MissFromRange),
        ["miss_from_middle"] = Finite(row.MissFromMiddle),
        ["assumed"] = row.Case.Assumed,
        ["air"] = row.Air,
        ["source"] = row.Case.Source,
        ["mark"] = row.Case.Mark,
    };

    private static JsonObject Law(DryingLawPoint point) => new()
    {
        ["thickness_in"] = point.Inches,
        ["temperature_c"] = point.Celsius,
        ["law_days"] = point.LawDays,
        ["predicted_days"] = Finite(point.PredictedDays),
        ["factor"] = Finite(point.Factor),
    };

    private static JsonObject Fact(BesideFact fact) => new()
    {
        ["subject"] = fact.Subject,
        ["fact"] = fact.Statement,
        ["printed_low"] = fact.Low,
        ["printed_high"] = fact.High,
        ["model"] = Finite(fact.Model),
        ["unit"] = fact.Unit,
        ["source"] = fact.Source,
    };

    private static JsonValue? Finite(double? value) => value is { } number && double.IsFinite(number) ? JsonValue.Create(number) : null;
}
