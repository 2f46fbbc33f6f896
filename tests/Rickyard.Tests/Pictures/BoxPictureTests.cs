using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Testing.Boxes;
using Rickyard.Web.Pictures;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class BoxPictureTests
{
    private static readonly DryingRun Run = InBox();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Labels_of_a_run_in_a_box_leave_each_other_room(bool narrow)
    {
        PictureLayout.LabelsLeaveEachOtherRoom(new(RunPicture.Svg(Run, new(narrow, narrow))));
    }

    [Fact]
    public void Air_of_the_box_stands_under_the_curves_and_the_class_is_named()
    {
        var picture = new SvgReading(RunPicture.Svg(Run));
        Assert.Single(picture.Groups("box"));
        Assert.Contains(picture.Texts, text => text.Key.StartsWith("Drawn here: small, the first of 3 classes", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_without_a_date_tells_days_by_their_number()
    {
        var picture = new SvgReading(RunPicture.Svg(Run));
        Assert.DoesNotContain(picture.Texts, text => text.Key.Contains("20", StringComparison.Ordinal) && text.Key.Contains("Oct", StringComparison.Ordinal));
        Assert.Contains(picture.Texts, text => text.Key.StartsWith("Ready from about day", StringComparison.Ordinal));
        Assert.Contains(picture.Texts, text => text.Key == "day 0");
    }

    [Fact]
    public void Override_is_on_the_picture()
    {
        var plan = Run.Charge!.Plan with { Stages = [new(StageKind.Drying, null, 82)], Override = "Half a day, and I sit beside it." };
        var picture = new SvgReading(RunPicture.Svg(Run with { Charge = Run.Charge with { Plan = plan } }));
        Assert.Contains(picture.Texts, text => text.Key.StartsWith("OVERRIDE.", StringComparison.Ordinal));
    }

    private static DryingRun InBox()
    {
        var charge = InventedCharge.Run().Charge!;
        var box = charge.Series;
        double[] Fitted(double[] values) => [.. Samples.Wedge.Days.Select((_, i) => values[i * (values.Length - 1) / (Samples.Wedge.Days.Length - 1)])];
        var series = new BoxSeries(Fitted(box.AirCelsius), Fitted(box.AirHumidity), Fitted(box.WallCelsius), Fitted(box.HeaterWatts), Fitted(box.WaterKilograms), Fitted(box.EnergyJoules));
        var drying = Samples.Wedge.Case with { Start = Samples.Wedge.Case.Start with { IsDated = false } };
        return Samples.Wedge with { Case = drying, Charge = charge with { Series = series } };
    }
}
