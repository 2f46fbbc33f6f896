using Rickyard.Core.Learning;
using Rickyard.Testing;
using Rickyard.Testing.Learning;
using Rickyard.Tests.Pictures;
using Rickyard.Web.Pictures;
using Rickyard.Web.Pictures.Learning;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Learn;

public sealed class LearningPictureTests
{
    private static readonly IReadOnlyDictionary<string, LearningRun> Runs = LearningSamples.All.ToDictionary(pair => pair.Key, pair => pair.Value.Build());

    public static TheoryData<string, bool, bool> EveryLayout()
    {
        var layouts = new TheoryData<string, bool, bool>();
        foreach (var name in Runs.Keys)
        foreach (var narrow in new[] { false, true })
            layouts.Add(name, !narrow, narrow);
        return layouts;
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Labels_in_the_widest_common_font_stay_on_the_canvas_and_leave_each_other_room(string name, bool dark, bool narrow)
    {
        var picture = new SvgReading(LearningPicture.Svg(Runs[name], new(dark, narrow)));
        PictureLayout.LabelsStayOnTheCanvas(picture);
        PictureLayout.LabelsLeaveEachOtherRoom(picture);
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Shapes_stay_on_the_canvas(string name, bool dark, bool narrow)
    {
        var picture = new SvgReading(LearningPicture.Svg(Runs[name], new(dark, narrow)));
        PictureLayout.ShapesStayOnTheCanvas(picture);
    }

    [Theory]
    [InlineData("usual", 10, 1, 2)]
    [InlineData("one-reading", 1, 0, 0)]
    [InlineData("bounds", 12, 1, 2)]
    public void Every_reading_has_its_mark_and_every_marked_split_its_line(string name, int readings, int suspects, int pieces)
    {
        var picture = new SvgReading(LearningPicture.Svg(Runs[name]));
        Assert.Equal((readings, suspects, pieces), (picture.Groups("reading").Count, picture.Groups("suspect").Count, picture.Groups("piece").Count));
        Assert.Single(picture.Groups("core"));
        Assert.Equal(2, picture.Groups("before")[0].Count);
        Assert.Equal(2, picture.Groups("spread")[0].Count);
        Assert.Single(picture.Groups("share"));
    }

    [Fact]
    public void Reading_that_can_hardly_be_right_is_named_by_its_line() =>
        Assert.Single(new SvgReading(LearningPicture.Svg(Runs["usual"])).Texts, text => text.Key == "line 10?");

    [Fact]
    public void Reading_stands_at_its_day_and_moisture()
    {
        var run = Runs["one-reading"];
        var picture = new SvgReading(LearningPicture.Svg(run));
        var (core, mark) = (picture.Groups("core")[0], picture.Groups("reading")[0]);
        var (left, right) = (core[0][0].X, core[1][^1].X);
        Assert.Equal(left + (right - left) * 40 / run.Days[^1], Box.Round(mark[^1]).Centre.X, 0.2);
        Assert.Equal(Rate(run, core, 0.28), Box.Round(mark[^1]).Centre.Y, 1.0);
    }

    [Fact]
    public void Bound_is_an_arrow_away_from_what_it_excludes()
    {
        var marks = new SvgReading(LearningPicture.Svg(Runs["bounds"])).Groups("reading");
        var ways = marks.Where(paths => paths[0].Count == 2 && paths.Count == 4).Select(paths => Math.Sign(paths[0][1].Y - paths[0][0].Y)).Order();
        Assert.Equal([-1, 1], ways);
    }

    [Fact]
    public void Each_kind_of_reading_has_a_shape_of_its_own() => Assert.Equal(8, Shapes("bounds").Distinct().Count());

    [Fact]
    public void Future_is_dashed_and_past_is_not()
    {
        var core = new SvgReading(LearningPicture.Svg(Runs["usual"])).Root.Descendants().Single(group => (string?)group.Attribute("class") == "core");
        Assert.Equal([false, true], core.Elements().Select(path => path.Attribute("stroke-dasharray") is not null));
    }

    [Fact]
    public void Picture_says_in_words_what_it_shows()
    {
        var picture = new SvgReading(LearningPicture.Svg(Runs["usual"]));
        Assert.Equal(Runs["usual"].Case.Name, picture.Part("title"));
        foreach (var words in new[] { "Ready from about", "before the 10 readings", "Marked splits, 7: core", "Can hardly be right: line 10" })
            Assert.Contains(words, picture.Part("desc"), StringComparison.Ordinal);
    }

    [Fact]
    public void Single_piece_has_no_share() => Assert.Empty(new SvgReading(LearningPicture.Svg(Runs["ready-piece"])).Groups("share"));

    [Fact]
    public void Picture_of_the_same_run_is_the_same() => Assert.Equal(LearningPicture.Svg(Runs["usual"]), LearningPicture.Svg(Runs["usual"]));

    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    public void Image_has_the_size_of_the_drawing_times_its_dots(double dots, bool narrow)
    {
        var canvas = new SvgReading(LearningPicture.Svg(Runs["usual"], new(Narrow: narrow))).Canvas;
        using var image = SkiaSharp.SKBitmap.Decode(LearningPicture.Png(Runs["usual"], new(Narrow: narrow, DotsPerPixel: dots)));
        Assert.Equal((dots * canvas.Width, dots * canvas.Height), (image.Width, image.Height));
    }

    [Theory]
    [InlineData("learnt", false)]
    [InlineData("learnt-phone-dark", true)]
    public void Example_in_the_guide_is_up_to_date(string name, bool phone)
    {
        string approved = RepositoryFolder.Of("docs", "images", $"{name}.svg"), received = RepositoryFolder.Of("docs", "images", $"{name}.received.svg");
        var svg = LearningPicture.Svg(Runs["usual"], new PictureOptions(Dark: phone, Narrow: phone));
        File.Delete(received);
        if (File.Exists(approved) && File.ReadAllText(approved) == svg) return;
        File.WriteAllText(received, svg);
        Assert.Fail($"{name}.svg is not what is drawn now. Look at {name}.received.svg beside it; if it is right, let it take the other's place.");
    }

    /// <summary>Height of a moisture, by the core's own line at start and end.</summary>
    private static double Rate(LearningRun run, IReadOnlyList<IReadOnlyList<Point>> core, double moisture)
    {
        var (start, end) = (run.Median.Core[0], run.Median.Core[^1]);
        return core[0][0].Y + (core[1][^1].Y - core[0][0].Y) * (start - moisture) / (start - end);
    }

    private static IEnumerable<(int Corners, bool IsUpright, string Fill)> Shapes(string name) => new SvgReading(LearningPicture.Svg(Runs[name])).Root.Descendants()
        .Where(group => (string?)group.Attribute("class") == "reading")
        .Select(group => group.Elements().LastOrDefault(path => (string?)path.Attribute("fill") != "none") is { } mark
            ? ShapeOf((string)mark.Attribute("d")!, (string)mark.Attribute("fill")!)
            : (0, false, ""));

    private static (int Corners, bool IsUpright, string Fill) ShapeOf(string path, string fill)
    {
        var numbers = path.Split(['M', 'L', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries);
        return (numbers.Length / 2, numbers[0] == numbers[2], fill);
    }
}
