using Rickyard.Core.Verification;

namespace Rickyard.Verification;

/// <summary>A verification as tables: plain for a terminal, Markdown for docs/trust.md.</summary>
public static class VerificationTable
{
    /// <summary>For a terminal; inputs and sources, which are long, are left to docs/trust.md.</summary>
    public static string Plain(VerificationReport report) => string.Join(
        "\n\n",
        Headline(report), Cases(report).Plain(), Facts(report).Without("source and what was taken").Plain(), Law(report).Plain(), LawSummary(report),
        "docs/trust.md names every source, and what was taken where it is silent.") + "\n";

    /// <summary>For docs/trust.md.</summary>
    public static string Markdown(VerificationReport report) =>
        string.Join(
            "\n\n", Headline(report), Cases(report).Markdown(), Inputs(report).Markdown(), Facts(report).Markdown(), Law(report).Markdown(), LawSummary(report)) + "\n";

    private static string Headline(VerificationReport report) =>
        $"Median miss of the {report.Scored.Count} scored rows: {Shown.Percent(report.MedianRelativeMissFromRange)} of the measured value from the measured range, "
        + $"{Shown.Percent(report.MedianRelativeMissFromMiddle)} from its middle; {Shown.Number(report.MedianMissInPoints)} percentage points from the range for the rows in percent. "
        + $"Model {report.ModelVersion}, {report.Members} members, seed {report.Seed}; no factor is tuned to any case.";

    private static string LawSummary(VerificationReport report) =>
        $"The engine's time goes with thickness to the power {Shown.Number(report.ThicknessExponent)} between 1 and 3 in at 60 °C (law: {RedOakDryingLaw.ThicknessExponent}); "
        + $"a board of 1 in takes {Shown.Number(report.TemperatureRatio)} times as long at 40 °C as at 80 °C (law: {Shown.Number(report.LawTemperatureRatio)}).";

    private static TextTable Cases(VerificationReport report) => new(
        "Measured cases",
        ["case", "wood", "what was measured", "unit", "measured range", "middle", "predicted", "p10", "p50", "p90", "miss", "from middle", "rank"],
        [.. report.Rows.Select(Case)]);

    private static string[] Case(VerificationRow row)
    {
        string Show(double? value) => Shown.Value(row.Case, value);
        return
        [
            row.Case.Name, row.Case.Species, row.Case.Observable, row.Case.Unit,
            row.Case.Low is null ? $"at most {Shown.Printed(row.Case.High)}" : Shown.Range(Shown.Printed(row.Case.Low), Shown.Printed(row.Case.High)),
            Shown.Printed(row.Case.Middle), Show(row.Predicted.Typical), Show(row.Predicted.LowTenth), Show(row.Predicted.Median), Show(row.Predicted.HighTenth),
            Show(row.MissFromRange), Show(row.MissFromMiddle), row.Case.Rank,
        ];
    }

    private static TextTable Inputs(VerificationReport report) => new(
        "What was taken where the source is silent",
        ["case", "pieces", "air", "source (mark)"],
        [.. report.Rows.Select(row => new[] { row.Case.Name, row.Case.Assumed, row.Air.Length > 0 ? row.Air : Shown.None, $"{row.Case.Source} ({row.Case.Mark})" })]);

    private static TextTable Facts(VerificationReport report) => new(
        "Facts beside the model, not scored",
        ["subject", "fact", "printed", "model", "unit", "source and what was taken"],
        [.. report.Beside.Select(Fact)]);

    private static string[] Fact(BesideFact fact) =>
    [
        fact.Subject, fact.Statement,
        fact.Low is null ? Shown.None : Shown.Range(Shown.Printed(fact.Low), Shown.Printed(fact.High)),
        Shown.Number(fact.Model), fact.Unit, fact.Source,
    ];

    private static TextTable Law(VerificationReport report) => new(
        "Red oak boards from 60 to 20 % dry basis in a kiln, beside the law of Tschernitz and Simpson (1979)",
        ["thickness, in", "temperature, °C", "law, days", "engine, days", "engine over law"],
        [.. report.DryingLaw.Select(point => new[]
        {
            Shown.Printed(point.Inches), Shown.Printed(point.Celsius), Shown.Number(point.LawDays), Shown.Number(point.PredictedDays), Shown.Number(point.Factor),
        })]);
}
