using NodaTime;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

public class WeatherScenarioTests
{
    private static readonly MonthlyNormals DesMoines = NormalsCatalogue.Find("Des Moines").Value!;
    private static readonly HourlyWeather Typical = WeatherReader.Read("t.epw", EpwText.Year((hour, fields) => fields[13] = $"{hour % 1000}")).Value!;

    [Fact]
    public void Typical_year_wraps_and_lends_28_February_to_the_29th()
    {
        var window = Typical.Window(new(2023, 12, 31, 22, 0), 24 * 62).Value!;
        Assert.Equal(Typical.Hours[8758], window.Hours[0]);
        Assert.Equal(Typical.Hours[0], window.Hours[2]);
        var leapDay = HoursSince(window.Start, new(2024, 2, 29, 5, 0));
        Assert.Equal(window.Hours[leapDay - 24], window.Hours[leapDay]);
        Assert.Equal(Typical.Hours[24 * 59 + 5], window.Hours[leapDay + 24]);
    }

    [Fact]
    public void Real_period_refuses_hours_it_does_not_hold()
    {
        var real = Typical.Window(new(2023, 3, 1, 0, 0), 100).Value!;
        Assert.Equal(50, real.Window(new(2023, 3, 3, 0, 0), 50).Value!.Hours.Count);
        var problem = Assert.Single(real.Window(new(2023, 3, 3, 0, 0), 53).Problems);
        Assert.Contains("covers 1 March 2023 0:00 to 5 March 2023 4:00", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_hours_come_first_and_years_as_they_may_come_after()
    {
        var start = new LocalDateTime(2024, 5, 1, 0, 0);
        var measured = SyntheticWeather.Year(DesMoines, 99, start.PlusHours(-50), 200);
        var joined = WeatherScenario.Join(measured, Typical, start, 1000).Value!;
        Assert.Equal(1000, joined.Hours.Count);
        Assert.Equal(measured.Hours.Skip(50), joined.Hours.Take(150));
        Assert.Equal(Typical.Window(start, 1000).Value!.Hours.Skip(150), joined.Hours.Skip(150));
        Assert.Contains(joined.Notes, note => note.Contains("Measured weather from 1 May 2024 0:00 to 7 May 2024 6:00", StringComparison.Ordinal));
    }

    [Fact]
    public void Members_from_normals_share_the_measured_part_and_spread_after_it()
    {
        var start = new LocalDateTime(2024, 5, 1, 0, 0);
        var scenario = WeatherScenario.FromNormals(DesMoines, SyntheticWeather.Year(DesMoines, 99, start, 240));
        var members = Enumerable.Range(1, 12).Select(seed => scenario.Member(seed, start, 2400)).ToList();
        Assert.All(members, member => Assert.Equal(members[0].Hours.Take(240), member.Hours.Take(240)));
        var means = members.ConvertAll(member => member.Hours.Skip(240).Average(hour => hour.RelativeHumidity));
        Assert.InRange(means.Max() - means.Min(), 0.005, 0.15);
        Assert.Equal(members[3].Hours, scenario.Member(4, start, 2400).Hours);
    }

    [Fact]
    public void Members_from_a_typical_year_are_its_own_hours_shuffled_by_weeks()
    {
        var scenario = WeatherScenario.FromTypicalYear(Typical).Value!;
        var start = new LocalDateTime(2023, 1, 1, 0, 0);
        Assert.Equal(Typical.Hours.Take(2000), scenario.Usual(start, 2000).Hours);
        Assert.NotEqual(scenario.Member(1, start, 2000).Hours, scenario.Member(2, start, 2000).Hours);
        var week = scenario.Member(3, start, 2000).Hours.Skip(7 * 24).Take(7 * 24).ToList();
        var shifts = Enumerable.Range(-14, 29).Select(shift => Typical.Hours.Concat(Typical.Hours).Skip(8760 + 24 * (7 + shift) - 8760 * (shift >= -7 ? 1 : 0)).Take(7 * 24));
        Assert.Contains(shifts, week.SequenceEqual);
    }

    [Fact]
    public void Too_short_a_year_cannot_stand_for_every_year() =>
        Assert.Contains("8760", Assert.Single(WeatherScenario.FromTypicalYear(Typical.Window(new(2023, 1, 1, 0, 0), 100).Value!).Problems).WhatIsWrong, StringComparison.Ordinal);

    private static int HoursSince(LocalDateTime from, LocalDateTime to) => (int)Period.Between(from, to, PeriodUnits.Hours).Hours;
}
