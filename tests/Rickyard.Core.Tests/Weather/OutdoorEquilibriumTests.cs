using NodaTime;
using Rickyard.Core.Weather;
using Rickyard.Core.Wood;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

/// <summary>
/// The monthly equilibrium moisture of wood outdoors that follows from the shipped normals, against published tables, which were computed from
/// monthly means too. They come from normals of other decades and from other stations of a city, so single places differ; the median must not.
/// The mean over hours lies about 1.2 points higher, since the isotherm bends upwards; real hours do the same.
/// </summary>
public class OutdoorEquilibriumTests(ITestOutputHelper output)
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    [Theory]
    [InlineData("Weather/emc_outdoor_simpson1998.csv")] // Simpson 1998, Table 1, from memory
    [InlineData("Weather/emc_outdoor_mitchell2016.csv")] // Mitchell 2016, secondary
    public void Outdoor_equilibrium_from_shipped_normals_agrees_with_the_published_tables(string table)
    {
        List<double> ofMeans = [], ofHours = [];
        foreach (var row in ReferenceTable.Read(table))
        {
            if (!NormalsCatalogue.Find($"{row.Text("city")}, {row.Text("state")}").TryGet(out var place)) continue;
            var published = Months.Select(row.Number).ToArray();
            var means = place.Months.Select(month => 100 * Moisture((month.HighCelsius + month.LowCelsius) / 2, month.RelativeHumidity)).ToArray();
            var hours = ByMonth(place);
            Say(place, "means of month", published, means, ofMeans);
            Say(place, "hours of years", published, hours, ofHours);
        }

        output.WriteLine($"{table}: {ofMeans.Count / 12} places; median miss from monthly means {Median(ofMeans):0.00}, from synthetic hours {Median(ofHours):0.00} points");
        Assert.True(ofMeans.Count >= 12 * 25, "Fewer than 25 places of the table are shipped.");
        Assert.InRange(Median(ofMeans), 0, 1);
    }

    [Fact]
    public void Synthetic_hours_have_the_equilibrium_moisture_of_the_real_hours_they_are_made_from()
    {
        Assert.SkipUnless(SharedWeather.Folder is not null, "SKIPPED: no folder shared/weather beside the repository, so no real files were read.");
        List<double> misses = [], bias = [];
        foreach (var file in Directory.GetFiles(Path.Combine(SharedWeather.Folder!, "epw")).Order())
        {
            var real = WeatherReader.Read(Path.GetFileName(file), WeatherText.Decode(File.ReadAllBytes(file)).Value!).Value!;
            var differences = ByMonth(MonthlyNormals.FromHours(real).Value!).Zip(ByMonth(real), (made, found) => made - found).ToArray();
            output.WriteLine($"{real.Name,-40} {string.Join(' ', differences.Select(miss => FormattableString.Invariant($"{Math.Round(miss, 1) + 0,5:0.0}")))}");
            misses.AddRange(differences.Select(Math.Abs));
            bias.AddRange(differences);
        }

        output.WriteLine(FormattableString.Invariant($"median miss {Median(misses):0.00}, mean {bias.Average():+0.00;-0.00}, largest {misses.Max():0.0} points"));
        Assert.InRange(Median(misses), 0, 0.5);
        Assert.InRange(Math.Abs(bias.Average()), 0, 0.3);
    }

    private void Say(MonthlyNormals place, string how, double[] published, double[] ours, List<double> misses)
    {
        var differences = ours.Zip(published, (left, right) => left - right).ToArray();
        misses.AddRange(differences.Select(Math.Abs));
        output.WriteLine($"{place.Name,-28} {how}: {string.Join(' ', differences.Select(miss => FormattableString.Invariant($"{Math.Round(miss, 1) + 0,5:0.0}")))}");
    }

    private static double[] ByMonth(MonthlyNormals place) => ByMonth(SyntheticWeather.Year(place, seed: 7, new LocalDateTime(2001, 1, 1, 0, 0), 4 * 8760));

    private static double[] ByMonth(HourlyWeather weather)
    {
        var months = weather.Hours.Select((hour, index) => (weather.Start.PlusHours(index).Month, Moisture: Moisture(hour.Celsius, hour.RelativeHumidity)));
        return [.. months.GroupBy(hour => hour.Month).OrderBy(month => month.Key).Select(month => 100 * month.Average(hour => hour.Moisture))];
    }

    private static double Moisture(double celsius, double humidity) => SorptionIsotherm.At(celsius).Moisture(humidity);

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
