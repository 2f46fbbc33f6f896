using System.Text.RegularExpressions;
using Rickyard.Core.Cases;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

/// <summary>The guide to the case file shows only what is read.</summary>
public sealed partial class CaseGuideTests
{
    private static readonly string Guide = File.ReadAllText(RepositoryFolder.Of("docs", "case-file.md"));

    public static TheoryData<string> Examples => [.. Fence().Matches(Guide).Select(match => match.Groups["text"].Value)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_of_the_guide_is_read_without_a_problem(string example) => Assert.Empty(CaseReader.Read(example, "example.json").Problems);

    [Theory]
    [InlineData("name"), InlineData("wood"), InlineData("split"), InlineData("lot"), InlineData("start"), InlineData("air"), InlineData("rack"), InlineData("history"), InlineData("run")]
    [InlineData("species"), InlineData("basic density"), InlineData("rate factor"), InlineData("shape"), InlineData("length"), InlineData("bark"), InlineData("green mass")]
    [InlineData("radius"), InlineData("inner radius"), InlineData("angle"), InlineData("diameter"), InlineData("width"), InlineData("height"), InlineData("pieces"), InlineData("size spread")]
    [InlineData("moisture"), InlineData("temperature"), InlineData("at"), InlineData("core"), InlineData("shell"), InlineData("end"), InlineData("steady"), InlineData("stages")]
    [InlineData("weather"), InlineData("file"), InlineData("normals"), InlineData("place"), InlineData("humidity"), InlineData("speed"), InlineData("for"), InlineData("cover")]
    [InlineData("sun"), InlineData("wind"), InlineData("rows"), InlineData("box"), InlineData("room"), InlineData("rest"), InlineData("split again"), InlineData("into"), InlineData("report every")]
    [InlineData("charge"), InlineData("shelf"), InlineData("packing"), InlineData("inside"), InlineData("depth"), InlineData("walls"), InlineData("conductance"), InlineData("heat capacity")]
    [InlineData("heater"), InlineData("power"), InlineData("thermostat band"), InlineData("radiant share"), InlineData("fuel"), InlineData("efficiency"), InlineData("fan"), InlineData("flow")]
    [InlineData("vent"), InlineData("opening"), InlineData("leaks"), InlineData("ambient"), InlineData("dehumidifier"), InlineData("capacity"), InlineData("glazing"), InlineData("gain")]
    [InlineData("over level"), InlineData("kind"), InlineData("tariff"), InlineData("electricity"), InlineData("gas"), InlineData("override")]
    [InlineData("readings"), InlineData("cook"), InlineData("band"), InlineData("scale"), InlineData("date"), InlineData("piece"), InlineData("value"), InlineData("unit"), InlineData("note")]
    public void Guide_explains_every_key(string key) => Assert.Contains($"`{key}`", Guide, StringComparison.Ordinal);

    [GeneratedRegex(@"```jsonc\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Fence();
}
