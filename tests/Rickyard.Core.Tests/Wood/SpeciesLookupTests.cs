using Rickyard.Core.Wood;

using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class SpeciesLookupTests
{
    [Theory]
    [InlineData("Northern Red Oak", "northern red oak")]
    [InlineData("northern-red-oak", "northern red oak")]
    [InlineData("  northern   red oaks ", "northern red oak")]
    [InlineData("Quercus rubra", "northern red oak")]
    [InlineData("red oak", "northern red oak")]
    [InlineData("oak, white", "white oak")]
    [InlineData("Post Oak", "post oak")]
    [InlineData("oak firewood", "oak of unknown kind")]
    [InlineData("hickories", "hickory of unknown kind")]
    [InlineData("pecans", "pecan")]
    [InlineData("cherries", "black cherry")]
    [InlineData("hard maple", "sugar maple")]
    [InlineData("soft maples", "soft maple")]
    [InlineData("mesquite", "honey mesquite")]
    [InlineData("apples", "apple")]
    [InlineData("birches", "birch of unknown kind")]
    [InlineData("ashes", "ash of unknown kind")]
    [InlineData("ash", "ash of unknown kind")]
    [InlineData("beech", "American beech")]
    [InlineData("European beech", "European beech")]
    [InlineData("Fagus sylvatica", "European beech")]
    [InlineData("Norway maple", "Norway maple")]
    [InlineData("peaches", "peach")]
    [InlineData("yellow poplar", "yellow-poplar")]
    [InlineData("Honey Locust", "honeylocust")]
    [InlineData("osage orange", "Osage-orange")]
    [InlineData("bois d'arc", "Osage-orange")]
    [InlineData("Carya tomentosa", "mockernut hickory")]
    [InlineData("black willow", "black willow")]
    [InlineData("loblolly pines", "loblolly pine")]
    [InlineData("basswood", "basswood")]
    [InlineData("unknown dense hardwood", "unknown dense hardwood")]
    public void Name_in_any_usual_form_is_found(string given, string expected)
    {
        Assert.True(SpeciesCatalogue.Find(given).TryGet(out var wood), string.Join(" ", SpeciesCatalogue.Find(given).Problems));
        Assert.Equal(expected, wood.CommonName);
    }

    [Theory]
    [InlineData("nothern red oka", "northern red oak")]
    [InlineData("shagbrak hickory", "shagbark hickory")]
    [InlineData("misquite", "honey mesquite")]
    [InlineData("suger maple", "sugar maple")]
    [InlineData("hickry", "hickory of unknown kind")]
    public void Misspelt_name_is_refused_with_the_nearest_first(string given, string meant)
    {
        var problem = Assert.Single(SpeciesCatalogue.Find(given).Problems);
        Assert.Equal("wood.species", problem.Field);
        Assert.Contains(given, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.StartsWith($"Did you mean {meant}, ", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  - ")]
    [InlineData("42")]
    public void Name_without_letters_is_called_empty(string given) =>
        Assert.Contains("empty", Assert.Single(SpeciesCatalogue.Find(given, "lot.species").Problems).WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Endless_name_is_refused_with_a_short_echo() =>
        Assert.InRange(Assert.Single(SpeciesCatalogue.Find(new string('q', 100_000)).Problems).WhatIsWrong.Length, 60, 120);

    [Fact]
    public void Every_name_and_alias_leads_to_its_own_wood_only()
    {
        var claims = SpeciesCatalogue.All.SelectMany(wood => wood.Aliases.Append(wood.CommonName).Select(name => (name, wood.CommonName)));
        Assert.All(claims, claim =>
        {
            Assert.True(SpeciesCatalogue.Find(claim.name).TryGet(out var found));
            Assert.Equal(claim.CommonName, found.CommonName);
        });
    }
}
