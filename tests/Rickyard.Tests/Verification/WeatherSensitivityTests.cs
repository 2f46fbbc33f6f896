using Rickyard.Core.Verification;
using Rickyard.Core.Weather;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Tests.Verification;

/// <summary>Cases on a rack rerun in other weather of about the same place, printed: how far the choice of weather alone moves them.</summary>
public class WeatherSensitivityTests(ITestOutputHelper output)
{
    private const double PointsThatWeatherMayMove = 6;

    [Fact]
    public void Beech_in_the_normals_of_the_windy_headland_is_near_the_row_of_the_table()
    {
        var headland = WeatherScenario.FromNormals(NormalsCatalogue.Find("Malin Head").Value!);
        var inland = WeatherScenario.FromNormals(NormalsCatalogue.Find("Dublin Airport").Value!);
        Compare("V13", "normals of Malin Head", headland, inland);
    }

    [Theory]
    [InlineData("met-eireann-hourly-2017-malin-head.csv")]
    [InlineData("met-eireann-hourly-2017-dublin-airport.csv")]
    public void Beech_in_the_hours_of_2017_is_near_the_row_of_the_table(string file)
    {
        Assert.SkipUnless(SharedWeather.Folder is not null, "SKIPPED: no folder shared/weather beside the repository, so no real hours were tried.");
        var text = WeatherText.Decode(SharedWeather.Read("observed", "met-eireann", file), file).Value!;
        var hours = WeatherReader.Read(file, text, new(Latitude: 54.6, Longitude: -6.5)).Value!;
        var inland = WeatherScenario.FromNormals(NormalsCatalogue.Find("Dublin Airport").Value!);
        Compare("V13", file, WeatherScenario.FromTypicalYear(hours).Value!, inland);
    }

    private void Compare(string id, string name, WeatherScenario weather, WeatherScenario table)
    {
        foreach (var measured in MeasuredCases.All.Where(measured => measured.Id == id))
        {
            Prediction here = VerificationRun.InWeather(measured, weather), there = VerificationRun.InWeather(measured, table);
            output.WriteLine(FormattableString.Invariant(
                $"{measured.Name}: measured {measured.Middle:0.0}, in {name} {here.Typical:0.0} ({here.LowTenth:0.0} to {here.HighTenth:0.0}), as in the table {there.Typical:0.0} {measured.Unit}"));
            Assert.InRange(here.Typical - there.Typical, -PointsThatWeatherMayMove, PointsThatWeatherMayMove);
        }
    }
}
