using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Testing;
using Rickyard.Testing.Boxes;
using Rickyard.Tests.Pictures;
using Rickyard.Web.Pictures.Schedules;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Schedules;

public sealed class SchedulePictureTests
{
    private static readonly ScheduleRequest Even = new(ChargeGoal.Even, 0.18, 0.20, 20, 70);

    private static readonly IReadOnlyDictionary<string, ScheduleAnswer> Answers = new Dictionary<string, ScheduleAnswer>
    {
        ["even"] = InventedSchedule.Of(Even),
        ["usable"] = InventedSchedule.Of(Even with { Goal = ChargeGoal.UsableNow }),
        ["impossible"] = InventedSchedule.Of(Even, meets: false),
        ["override"] = InventedSchedule.Of(Even, plan: InventedCharge.Plan with { Stages = [new(StageKind.Drying, 6, 82), new(StageKind.ClosedRest, null, 70)], Override = "Half a day, and I sit beside it." }),
        ["single"] = Single(),
    };

    public static TheoryData<string, bool, bool> EveryLayout()
    {
        var layouts = new TheoryData<string, bool, bool>();
        foreach (var name in Answers.Keys)
        foreach (var narrow in new[] { false, true })
            layouts.Add(name, !narrow, narrow);
        return layouts;
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Labels_in_the_widest_common_font_stay_on_the_canvas_and_leave_each_other_room(string name, bool dark, bool narrow)
    {
        var picture = new SvgReading(SchedulePicture.Svg(Answers[name], new(dark, narrow)));
        PictureLayout.LabelsStayOnTheCanvas(picture);
        PictureLayout.LabelsLeaveEachOtherRoom(picture);
    }

    [Theory]
    [MemberData(nameof(EveryLayout))]
    public void Shapes_stay_on_the_canvas(string name, bool dark, bool narrow)
    {
        var picture = new SvgReading(SchedulePicture.Svg(Answers[name], new(dark, narrow)));
        PictureLayout.ShapesStayOnTheCanvas(picture);
    }

    [Fact]
    public void Choice_with_the_larger_gap_has_the_larger_circle_and_the_chosen_one_is_said_in_words()
    {
        var answer = Answers["even"];
        var picture = new SvgReading(SchedulePicture.Svg(answer));
        var rows = TradeOffRow.Of(answer);
        double Width(ScheduleCandidate candidate) => candidate == answer.Best
            ? Box.Round(picture.Groups("chosen")[0][0]).Width
            : Box.Round(picture.Groups("choice")[rows.Where(row => !row.IsChosen).OrderByDescending(row => row.Candidate.Gap).Select(row => row.Candidate).ToList().IndexOf(candidate)][0]).Width;
        foreach (var (one, other) in rows.SelectMany(one => rows.Where(other => other.Candidate.Gap > one.Candidate.Gap + 0.005).Select(other => (one, other))))
            Assert.True(Width(other.Candidate) > Width(one.Candidate));
        Assert.Single(picture.Texts, text => text.Key == FormattableString.Invariant($"{rows.Single(row => row.IsChosen).Number} chosen"));
    }

    [Fact]
    public void Choices_are_at_most_eight_and_the_chosen_one_is_among_them()
    {
        var answer = Answers["even"];
        var many = answer with { TradeOff = [.. answer.Tried.OrderBy(one => one.Days)] };
        Assert.All(many.Tried, best => Assert.Single(TradeOffRow.Of(many with { Best = best }), row => row.IsChosen));
        Assert.Equal(8, TradeOffRow.Of(many).Count);
        Assert.Equal(Enumerable.Range(1, 8), TradeOffRow.Of(many).Select(row => row.Number));
    }

    [Fact]
    public void Mass_to_pull_at_is_written_for_every_class() => Assert.All(
        Answers["even"].Best.Classes,
        pull => Assert.Contains(new SvgReading(SchedulePicture.Svg(Answers["even"])).Texts, text => text.Key == FormattableString.Invariant($"{pull.MassAtPull:0.00} kg")));

    [Fact]
    public void Override_is_on_the_picture() =>
        Assert.Contains(new SvgReading(SchedulePicture.Svg(Answers["override"])).Texts, text => text.Key.StartsWith("OVERRIDE.", StringComparison.Ordinal));

    [Fact]
    public void Picture_of_the_same_answer_is_the_same() => Assert.Equal(SchedulePicture.Svg(Answers["even"]), SchedulePicture.Svg(Answers["even"]));

    [Fact]
    public void Picture_says_in_words_what_it_shows()
    {
        var words = new SvgReading(SchedulePicture.Svg(Answers["impossible"])).Part("desc");
        Assert.StartsWith("It cannot be done in 20 days", words, StringComparison.Ordinal);
        Assert.Contains("Pull list: small: pull on day", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pull-list", false)]
    [InlineData("pull-list-phone-dark", true)]
    public void Example_in_the_guide_is_up_to_date(string name, bool phone)
    {
        string approved = RepositoryFolder.Of("docs", "images", $"{name}.svg"), received = RepositoryFolder.Of("docs", "images", $"{name}.received.svg");
        var svg = SchedulePicture.Svg(Answers["even"], new(Dark: phone, Narrow: phone));
        File.Delete(received);
        if (File.Exists(approved) && File.ReadAllText(approved) == svg) return;
        File.WriteAllText(received, svg);
        Assert.Fail($"{name}.svg is not what is drawn now. Look at {name}.received.svg beside it; if it is right, let it take the other's place.");
    }

    [Fact]
    public void Image_is_twice_the_drawing()
    {
        var canvas = new SvgReading(SchedulePicture.Svg(Answers["even"])).Canvas;
        using var image = SkiaSharp.SKBitmap.Decode(SchedulePicture.Png(Answers["even"]));
        Assert.Equal((2 * canvas.Width, 2 * canvas.Height), (image.Width, image.Height));
    }

    private static ScheduleAnswer Single()
    {
        var answer = InventedSchedule.Of(Even);
        return answer with { TradeOff = [answer.Best], Tried = [answer.Best] };
    }
}
