using System.Text.Json;
using Rickyard.Testing.Approval;
using Xunit;

namespace Rickyard.Tests.Commands;

public sealed class SmallQuestionTests
{
    [Theory]
    [InlineData("help", "--help")]
    [InlineData("help-dry", "dry", "--help")]
    [InlineData("help-charge", "charge", "--help")]
    [InlineData("help-emc", "emc", "--help")]
    [InlineData("emc", "emc", "--temperature", "20 °C", "--humidity", "65 %")]
    [InlineData("emc-back", "emc", "--temperature", "70 °F", "--moisture", "19 % dry basis")]
    [InlineData("emc-table", "emc", "--table")]
    [InlineData("air", "air", "--temperature", "80 °F", "--wet-bulb", "67 °F", "--elevation", "5280 ft")]
    [InlineData("help-meter", "meter", "--help")]
    [InlineData("meter-hickory", "meter", "--species", "shagbark hickory", "--reading", "20", "--temperature", "40 °F", "--place", "core")]
    [InlineData("meter-wet", "meter", "--species", "post oak", "--reading", "over", "--place", "core")]
    [InlineData("meter-dry", "meter", "--species", "white ash", "--reading", "<6", "--temperature", "20 °C", "--place", "face")]
    [InlineData("meter-json", "meter", "--species", "black cherry", "--reading", "17.5", "--json")]
    [InlineData("meter-band", "meter", "--band", "18-20 %", "--species", "hickory")]
    [InlineData("wrong-meter", "meter", "--reading", "20 % wet basis", "--scale", "3", "--place", "top", "--temperature", "20")]
    [InlineData("wrong-meter-scale", "meter", "--species", "hickory", "--reading", "twenty", "--scale", "hickry")]
    [InlineData("species-red-oak", "species", "red", "oak")]
    [InlineData("wrong-words", "emc", "--tmperature", "20", "--humdity", "x")]
    [InlineData("wrong-command", "spcies")]
    [InlineData("wrong-quantities", "air", "--temperature", "20", "--humidity", "140 %", "--dew-point", "3 °C", "--elevation", "9 km", "--pressure", "840 hPa")]
    [InlineData("wrong-species", "species", "nothern red oka")]
    public void Answer_is_the_approved_one(string name, params string[] arguments) => Approved.Check("Rickyard.Tests", name, Typed.Run(arguments).Whole);

    [Fact]
    public void Version_is_that_of_the_program() => Assert.Matches(@"^\d+\.\d+\.\d+", Typed.Run("--version").Output);

    [Fact]
    public void Nothing_typed_shows_the_help() => Assert.Equal(Typed.Run("--help"), Typed.Run());

    // Wood Handbook FPL-GTR-282, eq. 4-5 at 21.1 °C and 65 %: 12.0 %.
    [Fact]
    public void Emc_json_holds_the_hysteresis_about_the_mean()
    {
        var emc = Json("emc", "--temperature", "70 °F", "--humidity", "65 %", "--json");
        Assert.Equal(12.0, emc.GetProperty("emc_pct_dry").GetDouble(), 0.1);
        Assert.True(emc.GetProperty("emc_adsorption_pct_dry").GetDouble() < 11.5 && emc.GetProperty("emc_desorption_pct_dry").GetDouble() > 12.5);
    }

    // James 1988, FPL-GTR-6, Table 1, derived: 20 on a Douglas-fir scale at 27 °C is 17.2 % in hickory, 18.5 % in white oak, 19.9 % in red oak.
    [Theory]
    [InlineData("hickory", 17.2)]
    [InlineData("white oak", 18.5)]
    [InlineData("northern red oak", 19.9)]
    public void Meter_json_has_the_corrected_reading_in_its_range(string wood, double percent)
    {
        var meter = Json("meter", "--species", wood, "--reading", "20", "--temperature", "27 °C", "--json");
        Assert.Equal(percent, meter.GetProperty("corrected_pct_dry").GetDouble(), 0.15);
        Assert.InRange(percent, meter.GetProperty("low_pct_dry").GetDouble(), meter.GetProperty("high_pct_dry").GetDouble());
        Assert.NotEqual(0, meter.GetProperty("notes").GetArrayLength());
    }

    [Fact]
    public void Meter_band_json_has_every_wood() =>
        Assert.Equal(Core.Wood.SpeciesCatalogue.All.Count, Json("meter", "--band", "18-20 %", "--json").GetProperty("woods").GetArrayLength());

    [Fact]
    public void Emc_back_and_forth_gives_the_start()
    {
        var humidity = Json("emc", "--temperature", "40 °C", "--moisture", "9 % dry basis", "--json").GetProperty("relative_humidity_pct").GetDouble();
        Assert.Equal(9, Json("emc", "--temperature", "40 °C", "--humidity", FormattableString.Invariant($"{humidity} %"), "--json").GetProperty("emc_pct_dry").GetDouble(), 0.01);
    }

    [Fact]
    public void Emc_table_json_has_a_row_a_temperature()
    {
        var table = Json("emc", "--table", "--temperature", "20 °C", "--json");
        Assert.Equal(table.GetProperty("relative_humidity_pct").GetArrayLength(), Assert.Single(table.GetProperty("rows").EnumerateArray()).GetProperty("emc_pct_dry").GetArrayLength());
    }

    [Theory]
    [InlineData("--humidity", "53.47 %")]
    [InlineData("--dew-point", "16.45 °C")]
    [InlineData("--wet-bulb", "19.444 °C")]
    public void Air_is_the_same_whichever_way_its_moisture_is_given(string option, string value)
    {
        var air = Json("air", "--temperature", "80 °F", option, value, "--elevation", "5280 ft", "--json");
        Assert.Equal(14.28, air.GetProperty("humidity_ratio_g_per_kg").GetDouble(), 0.02);
    }

    [Fact]
    public void Species_json_lists_every_wood_with_mark_and_source()
    {
        var all = Json("species", "--json").GetProperty("species").EnumerateArray().ToList();
        Assert.True(all.Count > 60);
        Assert.All(all, wood => Assert.NotEqual("", wood.GetProperty("values").GetProperty("basic_density_kg_per_m3").GetProperty("source").GetString()));
    }

    [Fact]
    public void Species_list_names_every_wood() => Assert.All(Core.Wood.SpeciesCatalogue.All, wood => Assert.Contains(wood.CommonName.Split(' ')[0], Typed.Run("species").Output, StringComparison.Ordinal));

    [Theory]
    [InlineData("emc", "--temperature", "20 °C")]
    [InlineData("emc", "--temperature", "20 °C", "--humidity", "50 %", "--moisture", "9 % dry basis")]
    [InlineData("emc", "--temperature", "110 °C", "--humidity", "90 %")]
    [InlineData("air", "--temperature", "20 °C", "--dew-point", "25 °C")]
    [InlineData("air", "--temperature", "20 °C", "--wet-bulb", "25 °C")]
    [InlineData("dry")]
    public void Wrong_question_says_why_on_the_error_side_and_exits_with_two(params string[] arguments)
    {
        var spoken = Typed.Run(arguments);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("problem", spoken.Error, StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] arguments)
    {
        var spoken = Typed.Run(arguments);
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
        return JsonDocument.Parse(spoken.Output).RootElement;
    }
}
