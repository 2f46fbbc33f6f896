using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Runs;

namespace Rickyard.Tests.Pictures;

/// <summary>Invented runs of every shape, some ready in time and some not, made once.</summary>
internal static class Samples
{
    public static readonly DryingRun Wedge = new SampleRun().Build();

    public static readonly IReadOnlyDictionary<SplitShape, DryingRun> All = new Dictionary<SplitShape, DryingRun>
    {
        [SplitShape.Wedge] = Wedge,
        [SplitShape.HalfRound] = new SampleRun { Split = Split.HalfRound(Millimetres(160), Millimetres(300)), Pace = 0.6 }.Build(),
        [SplitShape.Round] = new SampleRun { Split = Split.Round(Millimetres(110), Millimetres(300)), Days = 30, CutDays = [0, 5, 10, 15, 20, 25, 30] }.Build(),
        [SplitShape.InnerWedge] = new SampleRun { Split = Split.InnerWedge(Millimetres(60), Millimetres(170), Angle.FromDegrees(45), Millimetres(405)), Days = 200 }.Build(),
        [SplitShape.Block] = new SampleRun { Split = Split.Block(Millimetres(90), Millimetres(60), Millimetres(300)), Days = 8, Pace = 30, CutDays = [0, 2.5, 8] }.Build(),
    };

    private static Length Millimetres(double value) => Length.FromMillimetres(value);
}
