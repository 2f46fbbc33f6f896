using Rickyard.Core.Splits;
using Rickyard.Web.Pictures;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class SvgPictureTests
{
    public static TheoryData<SplitShape, bool, bool> EveryLayout()
    {
        var layouts = new TheoryData<SplitShape, bool, bool>();
        foreach (var shape in Enum.GetValues<SplitShape>())
        foreach (var narrow in new[] { false, true })
            layouts.Add(shape, narrow, narrow);
        layouts.Add(SplitShape.Wedge, true, false);
        layouts.Add(SplitShape.Wedge, false, true);
        return layouts;
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Labels_in_the_widest_common_font_stay_on_the_canvas(SplitShape shape, bool dark, bool narrow)
    {
        var picture = new SvgReading(RunPicture.Svg(Samples.All[shape], new(dark, narrow)));
        Assert.NotEmpty(picture.Texts);
        PictureLayout.LabelsStayOnTheCanvas(picture);
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Labels_in_the_widest_common_font_leave_each_other_room(SplitShape shape, bool dark, bool narrow)
    {
        PictureLayout.LabelsLeaveEachOtherRoom(new(RunPicture.Svg(Samples.All[shape], new(dark, narrow))));
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Shapes_stay_on_the_canvas(SplitShape shape, bool dark, bool narrow)
    {
        var picture = new SvgReading(RunPicture.Svg(Samples.All[shape], new(dark, narrow)));
        PictureLayout.ShapesStayOnTheCanvas(picture);
    }

    [Theory]
    [InlineData(false, PictureOptions.WideWidth)]
    [InlineData(true, PictureOptions.NarrowWidth)]
    public void Picture_has_the_width_of_its_layout(bool narrow, double width) =>
        Assert.Equal(width, new SvgReading(RunPicture.Svg(Samples.Wedge, new(Narrow: narrow))).Canvas.Width);

    [Fact]
    public void Picture_needs_nothing_from_outside()
    {
        var svg = RunPicture.Svg(Samples.Wedge).Replace("xmlns=\"http://www.w3.org/2000/svg\"", "", StringComparison.Ordinal);
        Assert.All(["http", "//", "href", "url(", "@import", "<script", "<image", "<style"], outside => Assert.DoesNotContain(outside, svg, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Picture_says_in_words_what_it_shows()
    {
        var picture = new SvgReading(RunPicture.Svg(Samples.Wedge));
        Assert.Equal(Samples.Wedge.Case.Name, picture.Part("title"));
        Assert.Contains("Ready from about", picture.Part("desc"), StringComparison.Ordinal);
        Assert.Contains("day 200: core", picture.Part("desc"), StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_of_the_same_run_is_the_same() => Assert.Equal(RunPicture.Svg(Samples.Wedge), RunPicture.Svg(Samples.Wedge));

    [Fact]
    public void Name_with_marks_of_the_language_or_without_end_does_no_harm()
    {
        const string Name = "<b> & \"oak\" \u0007 \ud83e\udeb5 \ud83e";
        var named = Samples.Wedge with { Case = Samples.Wedge.Case with { Name = Name + new string('w', 400) } };
        var picture = new SvgReading(RunPicture.Svg(named, new(Narrow: true)));
        Assert.StartsWith("<b> & \"oak\"", picture.Part("title"), StringComparison.Ordinal);
        Assert.All(picture.Texts, text => Assert.True(PictureLayout.Holds(picture.Canvas, text.Value), text.Key));
    }

    [Theory]
    [InlineData(SplitShape.Wedge)]
    [InlineData(SplitShape.Round)]
    [InlineData(SplitShape.Block)]
    public void Every_day_is_cut_twice(SplitShape shape)
    {
        var picture = new SvgReading(RunPicture.Svg(Samples.All[shape]));
        Assert.Equal(2 * Samples.All[shape].Snapshots.Count, picture.Groups("moisture").Count);
    }

    [Fact]
    public void Edges_of_the_band_are_drawn_where_the_moisture_passes_them()
    {
        var picture = new SvgReading(RunPicture.Svg(Samples.Wedge));
        var bands = picture.Groups("band");
        var fields = Samples.Wedge.Snapshots.SelectMany(snapshot => new[] { Cut.Across(snapshot).Mesh, Cut.Along(snapshot).Mesh }).ToArray();
        for (var cut = 0; cut < fields.Length; cut++)
        {
            var passes = new[] { 0.18, 0.20 }.Count(level => fields[cut].Least < level && level <= fields[cut].Most);
            Assert.Equal(passes > 0, bands[cut].Count > 0);
            var wood = Box.Round(picture.Groups("moisture")[cut][0]);
            Assert.All(bands[cut].SelectMany(line => line), point => Assert.True(PictureLayout.Holds(wood, new(point.X, point.Y, 0, 0))));
        }
    }
}
