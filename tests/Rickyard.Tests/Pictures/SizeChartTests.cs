using System.Xml.Linq;
using Rickyard.Core.Planning;
using Rickyard.Testing.Cases;
using Rickyard.Testing.Planning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Sizes;
using Rickyard.Web.Pictures.Surface;
using SkiaSharp;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class SizeChartTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly SizeCalendar Calendar = Of("""{ "shape": "wedge", "length": "16 in", "radius": "5 in", "angle": "45°" }""");

    private static readonly SvgReading Chart = new(SizeChart.Svg(Calendar));

    public static TheoryData<string> Shapes =>
    [
        """{ "shape": "wedge", "length": "16 in", "radius": "5 in", "angle": "45°" }""",
        """{ "shape": "wedge", "length": "16 in", "radius": "5 in", "angle": "120°" }""",
        """{ "shape": "round", "length": "16 in", "diameter": "10 in" }""",
        """{ "shape": "half round", "length": "16 in", "diameter": "10 in" }""",
        """{ "shape": "inner wedge", "length": "16 in", "inner radius": "2 in", "radius": "6 in", "angle": "60°" }""",
        """{ "shape": "block", "length": "16 in", "width": "2 in", "height": "5 in" }""",
    ];

    [Fact]
    public void Page_is_a4_on_its_side() => Assert.Equal(297.0 / 210, Chart.Canvas.Width / Chart.Canvas.Height, 0.002);

    [Fact]
    public void Every_month_and_span_has_its_cell_with_width_and_day()
    {
        Assert.Equal(72, Chart.Groups("cell").Count);
        for (var row = 0; row < 12; row++)
        for (var column = 0; column < 6; column++)
            Assert.Contains(Chart.Texts, text => text.Key == SizeWords.By(Calendar.Starts[row], Calendar.Request.Spans[column]));
        Assert.Equal(Calendar.Widths.SelectMany(row => row).Count(width => width is null), Chart.Texts.Count(text => text.Key == "not even 3 cm"));
        Assert.Contains(Chart.Texts, text => text.Key == "30\u00a0cm+");
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Nothing_leaves_the_page_or_lies_on_another_text(string split)
    {
        var chart = new SvgReading(SizeChart.Svg(Of(split)));
        Assert.All(chart.AllPoints(), point => Assert.True(point.X >= 0 && point.Y >= 0 && point.X <= chart.Canvas.Width && point.Y <= chart.Canvas.Height));
        Assert.All(chart.Texts, text => Assert.True(text.Value.Left >= 0 && text.Value.Right <= chart.Canvas.Width && text.Value.Bottom <= chart.Canvas.Height, text.Key));
        for (var one = 0; one < chart.Texts.Count; one++)
        for (var other = one + 1; other < chart.Texts.Count; other++)
            Assert.False(Overlap(chart.Texts[one].Value, chart.Texts[other].Value), $"{chart.Texts[one].Key} lies on {chart.Texts[other].Key}");
    }

    [Fact]
    public void Text_of_a_cell_stays_in_it()
    {
        var cells = Chart.Groups("cell").Select(cell => Box.Round(cell[0])).ToArray();
        Assert.All(Chart.Texts.Where(text => text.Key.StartsWith("by ", StringComparison.Ordinal) || text.Key.EndsWith("in", StringComparison.Ordinal) && text.Key.Length < 8), text =>
            Assert.Contains(cells, cell => text.Value.Left >= cell.Left && text.Value.Right <= cell.Right && text.Value.Top >= cell.Top && text.Value.Bottom <= cell.Bottom + 1));
    }

    [Fact]
    public void Page_says_what_it_promises_and_on_what_it_rests()
    {
        var words = string.Join(' ', Chart.Texts.Select(text => text.Key)).Replace('\u00a0', ' ');
        foreach (var part in new[] { "northern red oak", "9 in 10 cores", "20 % dry basis", "Des Moines, Iowa", "covered on top", "Core: the inner tenth", "A forecast, not a promise", "Model invented-1", "Oak by the barn" })
            Assert.Contains(part, words, StringComparison.Ordinal);
    }

    [Fact]
    public void Wider_is_darker_so_that_it_shows_in_grey_and_ink_stays_readable_on_it()
    {
        var grounds = Chart.Root.Descendants(Svg + "g").Where(group => (string?)group.Attribute("class") == "cell").Select(cell => Lightness((string)cell.Elements(Svg + "path").First().Attribute("fill")!));
        var tones = Calendar.Widths.SelectMany(row => row).Zip(grounds, (width, tone) => (Width: width ?? 0, Tone: tone)).Distinct().OrderBy(cell => cell.Width).ToArray();
        Assert.InRange(tones.Length, 5, 30);
        Assert.All(tones.Zip(tones.Skip(1)), pair => Assert.True(pair.Second.Tone < pair.First.Tone));
        Assert.True(tones[0].Tone - tones[^1].Tone > 0.1);
        Assert.True(tones[^1].Tone - OkLch.LightnessOf(Palette.Light.Ink) > 0.45);
    }

    [Fact]
    public void Image_has_the_size_of_the_page_times_its_dots()
    {
        using var image = SKBitmap.Decode(SizeChart.Png(Calendar));
        Assert.Equal((2 * (int)SizeChart.Width, 2 * (int)SizeChart.Height), (image.Width, image.Height));
    }

    [Theory]
    [InlineData(0.09, "9 cm (3½ in)")]
    [InlineData(0.03, "3 cm (1 in)")]
    [InlineData(0.0254, "2.5 cm (1 in)")]
    [InlineData(0.125, "12.5 cm (4¾ in)")]
    public void Inches_never_promise_more_than_centimetres(double width, string words) => Assert.Equal(words, WidthWords.Both(width).Replace('\u00a0', ' '));

    private static double Lightness(string hex) => OkLch.LightnessOf(Rgb.From(Convert.ToInt32(hex[1..], 16)));

    private static bool Overlap(Box one, Box other) => one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;

    private static SizeCalendar Of(string split) => InventedSizes.Calendar(
        SampleCase.Read(SampleCase.Change(SampleCase.With("air", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "split", split)), new());
}
