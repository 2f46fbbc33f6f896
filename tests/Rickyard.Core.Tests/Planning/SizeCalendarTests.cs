using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Weather;
using Rickyard.Testing.Planning;
using Xunit;

namespace Rickyard.Core.Tests.Planning;

public sealed class SizeCalendarTests
{
    private static readonly WeatherName Place = new(null, "Des Moines, Iowa");

    private static readonly Dictionary<WeatherName, WeatherScenario> Weather = new() { [Place] = WeatherScenario.FromNormals(NormalsCatalogue.Find("Des Moines, Iowa").Value!) };

    private static readonly SizeCalendarRequest Request = new(Confidence: 0.75, Members: 4) { Spans = [2, 3] };

    private static readonly SizeCalendar Found = SizeCalendarSearch.Run(OnRack(), Request, Weather).Value!;

    [Fact]
    public void Rows_are_the_twelve_months_from_january_within_a_year_of_the_case()
    {
        Assert.Equal(Enumerable.Range(1, 12), Found.Starts.Select(start => start.Month));
        Assert.All(Found.Starts, start => Assert.Equal((1, start.Month < 3 ? 2027 : 2026), (start.Day, start.Year)));
        Assert.All(Found.Widths, row => Assert.Equal(Request.Spans.Count, row.Count));
    }

    [Fact]
    public void Width_does_not_fall_with_time_and_summer_allows_more_than_winter()
    {
        Assert.All(Found.Widths, row => Assert.True((row[0] ?? 0) <= (row[1] ?? 0)));
        Assert.True(Found.Widths[5][1] > (Found.Widths[11][1] ?? 0));
    }

    [Fact]
    public void Cell_is_a_size_that_is_ready_and_the_next_one_tried_is_not()
    {
        const int June = 5;
        var width = Assert.NotNull(Found.Widths[June][1]);
        var next = SizeSteps.Coarse.First(size => size > width);
        Assert.True(Chance(June, width) >= 0.75);
        Assert.True(Chance(June, next) < 0.75);
    }

    [Fact]
    public void Air_without_a_calendar_has_no_chart()
    {
        var problem = Assert.Single(SizeCalendarSearch.Run(SizeCase.InAir(), Request, Weather, null, TestContext.Current.CancellationToken).Problems);
        Assert.Equal("air", problem.Field);
    }

    [Fact]
    public void Search_that_is_stopped_ends() => Assert.Throws<OperationCanceledException>(() => SizeCalendarSearch.Run(OnRack(), Request, Weather, null, new CancellationToken(canceled: true)));

    private static double Chance(int row, double width)
    {
        var start = Found.Starts[row];
        var days = NodaTime.Period.DaysBetween(start, start.PlusMonths(3));
        var drying = OnRack() with { Start = OnRack().Start with { At = start } };
        return new SizeTrial(width, new SizeRuns(drying, new(4, 1, 0.1, 0.2), Weather, CancellationToken.None).Run(width, days, days).Window.FirstDays).ChanceBy(days);
    }

    private static DryingCase OnRack() => SizeCase.Of([new RackPeriod(null, Place, new())]);
}
