using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Intake;

public sealed class CaseReadingsTests
{
    [Fact]
    public void Readings_of_a_case_are_observations_and_it_says_that_it_carries_them()
    {
        var drying = With("""
            "readings": [ { "date": "2026-06-18", "kind": "pin", "place": "core", "value": "24 %", "temperature": "22 °C" }, { "date": "2026-06-18", "piece": "7", "kind": "mass", "value": "5 lb 3 oz" } ]
            """).Value!;
        Assert.Collection(drying.Observations, pin => Assert.IsType<PinObservation>(pin), mass => Assert.IsType<MassObservation>(mass));
        Assert.Contains(drying.Assumptions, sentence => sentence == "This case carries 2 readings; `rickyard learn` uses them.");
    }

    [Fact]
    public void Malformed_reading_is_a_problem_of_the_case_that_names_it()
    {
        var problems = With("""
            "readings": [ { "date": "2026-06-18", "kind": "pin", "place": "core", "value": "24 %" }, { "date": "2026-06-18", "kind": "oven", "place": "whole", "value": "24 %", "colour": "red" } ]
            """).Problems;
        Assert.Equal(["readings[1].colour", "readings[1].unit"], problems.Select(problem => problem.Field).Order());
    }

    [Fact]
    public void Band_of_the_cook_is_kept_as_given()
    {
        var cook = With("""
            "cook": { "band": "18-20 %", "scale": "Douglas-fir" }
            """).Value!.Cook!;
        Assert.Equal((0.18, 0.20, "Douglas-fir"), (Math.Round(cook.Low, 9), Math.Round(cook.High, 9), cook.Scale.Name));
    }

    [Fact]
    public void Case_without_either_carries_nothing()
    {
        Assert.Empty(OakIntake.Case.Observations);
        Assert.Null(OakIntake.Case.Cook);
    }

    private static Result<DryingCase> With(string section) => CaseReader.Read(OakIntake.CaseText.Replace("\"name\":", $"{section.Trim()},\n  \"name\":", StringComparison.Ordinal), "oak.json");
}
