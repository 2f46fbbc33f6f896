using Rickyard.Core.Measuring;
using Rickyard.Core.Splits;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Testing.Cases;
using Rickyard.Core.Cases;
using Rickyard.Testing.Measuring;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

public sealed class ProfileReadingTests(ITestOutputHelper output)
{
    [Fact]
    public void Explore()
    {
        foreach (var shape in Enum.GetValues<SplitShape>())
        foreach (var (place, shown) in new[] { (PinPlace.SplitFace, 0.17), (PinPlace.SplitFace, 0.20), (PinPlace.EndGrain, 0.15), (PinPlace.FreshCore, 0.20) })
        foreach (var emc in new[] { 0.10, 0.12, 0.14 })
        {
            var clock = System.Diagnostics.Stopwatch.StartNew();
            var profile = ProfileReading.Of(PracticeCase.Of("northern red oak", DriedPiece.Of(shape)), [new(new(place), shown)], emc).Value!;
            output.WriteLine($"{shape} {place} {shown} emc {emc}: {profile.Describe()} {profile.Days:0} d misfit {profile.Misfit:0.0000} {clock.ElapsedMilliseconds} ms  core {profile.Core:0.000} mean {profile.Mean:0.000}");
        }
    }

    [Fact]
    public void Explore_practice()
    {
        foreach (var place in new[] { "Des Moines, Iowa", "Boise, Idaho", "Pittsburgh, Pennsylvania", "Seattle, Washington" })
        foreach (var species in new[] { "northern red oak", "white oak", "shagbark hickory" })
        foreach (var radius in new[] { 0.08, 0.11, 0.14 })
        foreach (var month in new[] { 3, 10 })
        {
            var run = PracticeCase.OnRack(species, radius, place, new(2025, month, 1), 600);
            var grid = run.Snapshots[0].Grid;
            foreach (var s in run.Snapshots)
            {
                double At(PinPlace p) => PinView.Of(s.Grid, new(p)).Read(s.Moisture);
                output.WriteLine($"{place} {species} {radius} {month} day {s.Day}: end {At(PinPlace.EndGrain):P1} face {At(PinPlace.SplitFace):P1} side {At(PinPlace.Side):P1} core {At(PinPlace.FreshCore):P1} emc {run.AirEquilibrium[Array.FindIndex(run.Days, d => d >= s.Day)]:P1}");
            }
        }

        foreach (var r in new[] { 0.05, 0.06, 0.12 })
        {
            var run = PracticeCase.Through("northern red oak", r, 0.60, [new SteadyPeriod(14, 70, 0.05, 1)], 14);
            var s = run.Snapshots[^1];
            double At(PinPlace p) => PinView.Of(s.Grid, new(p)).Read(s.Moisture);
            output.WriteLine($"box {r}: end {At(PinPlace.EndGrain):P1} face {At(PinPlace.SplitFace):P1} side {At(PinPlace.Side):P1} core {At(PinPlace.FreshCore):P1}");
        }
    }
}
