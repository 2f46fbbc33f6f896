using NodaTime;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

public class SyntheticWeatherTests(ITestOutputHelper output)
{
    private static readonly LocalDateTime NewYear = new(2023, 1, 1, 0, 0);
    private static readonly MonthlyNormals DesMoines = NormalsCatalogue.Find("Des Moines, Iowa").Value!;

    public static TheoryData<string> SomePlaces => new("Des Moines, Iowa", "Phoenix", "Seattle", "Miami", "Fairbanks", "Dublin", "Berlin", "Bourges");

    [Theory]
    [MemberData(nameof(SomePlaces))]
    public void Year_without_variability_keeps_the_monthly_means(string name)
    {
        var place = NormalsCatalogue.Find(name).Value!;
        var months = ByMonth(SyntheticWeather.Year(place, 3, NewYear, 8760, WeatherVariability.None));
        for (var month = 0; month < 12; month++)
        {
            var normal = place.Months[month];
            Assert.Equal((normal.HighCelsius + normal.LowCelsius) / 2, months[month].Average(hour => hour.Celsius), 0.15);
            Assert.Equal(normal.RelativeHumidity, months[month].Average(hour => hour.RelativeHumidity), 0.005);
            Assert.Equal(normal.WindSpeed, months[month].Average(hour => hour.WindSpeed), 0.05);
        }
    }

    [Theory]
    [MemberData(nameof(SomePlaces))]
    public void Ensemble_of_years_keeps_the_monthly_means_and_spreads(string name)
    {
        const int Years = 40;
        var place = NormalsCatalogue.Find(name).Value!;
        var rain = RainSource.For(place).Normals;
        var years = Enumerable.Range(1, Years).Select(seed => ByMonth(SyntheticWeather.Year(place, seed, NewYear, 8760))).ToList();
        double worstCelsius = 0, worstHumidity = 0;
        for (var month = 0; month < 12; month++)
        {
            var normal = place.Months[month];
            var means = years.ConvertAll(year => year[month].Average(hour => hour.Celsius));
            worstCelsius = Math.Max(worstCelsius, Math.Abs(means.Average() - (normal.HighCelsius + normal.LowCelsius) / 2));
            worstHumidity = Math.Max(worstHumidity, Math.Abs(years.Average(year => year[month].Average(hour => hour.RelativeHumidity)) - normal.RelativeHumidity));
            Assert.InRange(means.Max() - means.Min(), 0.5, 20);
        }

        var total = years.Average(year => year.Sum(month => month.Sum(hour => hour.Rain)));
        output.WriteLine($"{name}: worst month {worstCelsius:0.00} K, {100 * worstHumidity:0.0} points; rain {total:0} mm against {rain.Months.Sum(month => month.Rain):0}");
        Assert.InRange(worstCelsius, 0, 1.2); // four standard errors of 40 winter months of 2 K
        Assert.InRange(worstHumidity, 0, 0.025);
        Assert.Equal(rain.Months.Sum(month => month.Rain)!.Value, total, 0.1 * total);
    }

    [Fact]
    public void Same_seed_same_weather_other_seed_other_weather()
    {
        var first = SyntheticWeather.Year(DesMoines, 11, NewYear, 2000);
        Assert.Equal(first.Hours, SyntheticWeather.Year(DesMoines, 11, NewYear, 2000).Hours);
        Assert.NotEqual(first.Hours, SyntheticWeather.Year(DesMoines, 12, NewYear, 2000).Hours);
    }

    [Fact]
    public void Longer_run_begins_like_the_shorter_one()
    {
        var longer = SyntheticWeather.Year(DesMoines, 5, NewYear, 3000).Hours;
        var shorter = SyntheticWeather.Year(DesMoines, 5, NewYear, 1000).Hours;
        Assert.Equal(longer.Take(980), shorter.Take(980)); // the last half day leans on the day after it
    }

    [Fact]
    public void Wet_days_follow_the_chain_of_the_normals()
    {
        var year = SyntheticWeather.Year(DesMoines, 2, NewYear, 20 * 8760);
        var wet = year.Hours.Chunk(24).Select(day => day.Sum(hour => hour.Rain) > 0).ToArray();
        var expected = DesMoines.Months.Sum(month => month.WetDays!.Value) / 365;
        var afterWet = wet.Zip(wet.Skip(1)).Where(pair => pair.First).Average(pair => pair.Second ? 1.0 : 0);
        Assert.Equal(expected, wet.Average(day => day ? 1.0 : 0), 0.02);
        Assert.Equal(expected + 0.25 * (1 - expected), afterWet, 0.03);
    }

    [Fact]
    public void Humidity_is_lowest_in_the_afternoon_and_temperature_highest()
    {
        var hours = SyntheticWeather.Year(DesMoines, 4, NewYear, 8760, WeatherVariability.None).Hours;
        var celsius = Enumerable.Range(0, 24).Select(hour => hours.Where((_, index) => index % 24 == hour).Average(value => value.Celsius)).ToArray();
        var humidity = Enumerable.Range(0, 24).Select(hour => hours.Where((_, index) => index % 24 == hour).Average(value => value.RelativeHumidity)).ToArray();
        Assert.Equal(14, Array.IndexOf(celsius, celsius.Max())); // the hour that ends at 15
        Assert.Equal(14, Array.IndexOf(humidity, humidity.Min()));
    }

    [Fact]
    public void Sun_follows_latitude_and_season()
    {
        var north = SyntheticWeather.Year(DesMoines, 4, NewYear, 8760);
        var june = ByMonth(north)[5].Average(hour => hour.GlobalSun);
        Assert.InRange(june, 200, 300); // Des Moines, June: about 6.3 kWh/m² a day, 262 W/m² (NREL, from memory)
        Assert.InRange(ByMonth(north)[11].Average(hour => hour.GlobalSun), 40, 110);
        Assert.Equal(0, north.Hours[2].GlobalSun);
    }

    [Fact]
    public void Extraterrestrial_radiation_agrees_with_the_worked_example() =>
        Assert.Equal(32.2, DailySunForTests(-20, new LocalDate(2001, 9, 3)), 0.3); // FAO-56, example 8: 20° S on 3 September, 32.2 MJ/m² (from memory)

    [Fact]
    public void Places_without_rain_borrow_it_and_say_so()
    {
        var weather = SyntheticWeather.Year(NormalsCatalogue.Find("Bourges").Value!, 1, NewYear, 8760);
        Assert.Contains(weather.Notes, note => note.Contains("Rain", StringComparison.Ordinal));
        Assert.InRange(weather.Hours.Sum(hour => hour.Rain), 200, 2000);
    }

    private static double DailySunForTests(double latitude, LocalDate date) => DailySun.Extraterrestrial(latitude, date.DayOfYear - 1) * 86400 / 1e6;

    private static WeatherHour[][] ByMonth(HourlyWeather weather) =>
    [
        .. weather.Hours.Select((hour, index) => (weather.Start.PlusHours(index).Month, hour)).GroupBy(pair => pair.Month).OrderBy(month => month.Key)
            .Select(month => month.Select(pair => pair.hour).ToArray()),
    ];
}
