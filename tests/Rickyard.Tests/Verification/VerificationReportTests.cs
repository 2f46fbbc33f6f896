using Rickyard.Core.Verification;
using Rickyard.Core.Weather;
using Rickyard.Verification;
using Xunit;

namespace Rickyard.Tests.Verification;

public class VerificationReportTests(VerificationReportFixture fixture, ITestOutputHelper output) : IClassFixture<VerificationReportFixture>
{
    private const double AllowedPoints = 3;

    private VerificationReport Report => fixture.Report;

    [Theory]
    [InlineData("V04")]
    [InlineData("V13 week 1")]
    [InlineData("V13 week 4")]
    public void Case_with_the_best_weighing_is_within_three_points_of_the_measured_range(string name) =>
        Assert.InRange(Report.Rows.Single(row => row.Case.Name == name).MissFromRange, 0, AllowedPoints);

    [Fact]
    public void Red_oak_boards_are_within_a_factor_two_of_the_published_law() =>
        Assert.All(Report.DryingLaw, point => Assert.InRange(point.Factor, 0.5, 2));

    [Fact]
    public void Every_case_but_heating_has_a_row_and_stress_tests_are_not_scored()
    {
        Assert.Equal(MeasuredCases.All.Where(measured => measured.Id != "V19").Select(measured => measured.Name), Report.Rows.Select(row => row.Case.Name));
        Assert.DoesNotContain(Report.Scored, row => row.Case.Rank == "stress test");
        Assert.Equal(Report.Rows.Count, Report.Scored.Count + 3);
    }

    [Fact]
    public void Bands_enclose_their_medians() => Assert.All(
        Report.Rows.Where(row => row.Predicted.Median is not null),
        row => Assert.True(row.Predicted.LowTenth <= row.Predicted.Median && row.Predicted.Median <= row.Predicted.HighTenth, row.Case.Name));

    [Fact]
    public void Run_repeated_gives_the_same_digits()
    {
        var row = Report.Rows.Single(row => row.Case.Name == "V13 week 4");
        var again = VerificationRun.InWeather(row.Case, WeatherScenario.FromNormals(NormalsCatalogue.Find("Dublin Airport").Value!));
        Assert.Equal(row.Predicted, again);
    }

    /// <summary>Rerun and compared number by number; other processors may differ in the last digit shown, no more.</summary>
    [Fact]
    public void Trust_page_shows_what_the_engine_gives_today()
    {
        var page = TrustPage.Read();
        var table = VerificationTable.Markdown(Report);
        var difference = TrustPage.FirstDifference(page.Table, table);
        if (difference is not null) page.WriteReceived(table);
        Assert.True(difference is null, $"docs/trust.md differs: {difference}. See docs/trust.received.md; if the change is meant, put it in the place of docs/trust.md.");
    }

    [Fact]
    public void Plain_table_has_every_case_and_the_median_miss()
    {
        var text = VerificationTable.Plain(Report);
        output.WriteLine(text);
        Assert.StartsWith("Median miss of the 10 scored rows", text, StringComparison.Ordinal);
        Assert.All(Report.Rows, row => Assert.Contains($"\n{row.Case.Name}  ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_holds_the_same_misses_and_no_infinity()
    {
        var json = VerificationJson.Of(Report);
        Assert.Equal(Report.Rows.Count, json["cases"]!.AsArray().Count);
        Assert.Equal(Report.Rows[1].MissFromRange, (double)json["cases"]![1]!["miss_from_range"]!);
        Assert.DoesNotContain("Infinity", json.ToJsonString(), StringComparison.Ordinal);
    }
}
