using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

public class NormalsCatalogueTests
{
    [Fact]
    public void Shipped_places_are_complete_and_say_their_source()
    {
        Assert.Equal(81, NormalsCatalogue.Places.Count);
        Assert.All(NormalsCatalogue.Places, place =>
        {
            Assert.Equal(12, place.Months.Count);
            Assert.NotEmpty(place.Source);
            Assert.All(place.Months, month =>
            {
                Assert.True(month.HighCelsius > month.LowCelsius);
                Assert.InRange(month.RelativeHumidity, 0.1, 1);
                Assert.InRange(month.WindSpeed, 0.5, 10);
            });
        });
        Assert.Equal(79, NormalsCatalogue.Places.Count(place => place.RainKnown));
        Assert.Equal(7, NormalsCatalogue.Places.Count(place => place.OneYearOnly));
    }

    [Theory]
    [InlineData("Des Moines, Iowa", "Des Moines")]
    [InlineData("des moines", "Des Moines")]
    [InlineData("Des Moines, IA", "Des Moines")]
    [InlineData("DES MOINES IA", "Des Moines")]
    [InlineData("des moines iowa", "Des Moines")]
    [InlineData("St Louis, Missouri", "St. Louis")]
    [InlineData("saint louis", "St. Louis")]
    [InlineData("Minneapolis", "Minneapolis-St. Paul")]
    [InlineData("Dublin", "Dublin Airport")]
    [InlineData("Portland, ME", "Portland")]
    [InlineData("Berlin, Germany", "Berlin")]
    public void Place_is_found_however_it_is_written(string written, string city) => Assert.Equal(city, NormalsCatalogue.Find(written).Value?.City);

    [Fact]
    public void Misspelt_place_is_refused_with_suggestions()
    {
        var problem = Assert.Single(NormalsCatalogue.Find("Des Monies").Problems);
        Assert.Contains("Des Monies", problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("Des Moines, Iowa", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Name_of_two_places_asks_which()
    {
        var problem = Assert.Single(NormalsCatalogue.Find("Portland").Problems);
        Assert.Contains("Portland, Maine; Portland, Oregon", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_state_is_not_overlooked() => Assert.Null(NormalsCatalogue.Find("Des Moines, Texas").Value);

    [Fact]
    public void Nearest_place_is_found_with_its_distance()
    {
        var (place, kilometres) = NormalsCatalogue.Nearest(42.27, -82.97);
        Assert.Equal("Detroit", place.City);
        Assert.InRange(kilometres, 5, 60);
    }
}
