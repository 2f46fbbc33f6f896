using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class AllocationTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Steps_allocate_nothing(int lanes)
    {
        var split = Split.Wedge(Length.FromMetres(0.11), Angle.FromDegrees(60), Length.FromMetres(0.4));
        var grid = new LaneGrid([.. Enumerable.Repeat(SplitGrid.For(split), lanes)]);
        var law = new SplitLaw(grid, MobilityTable.Of(new(560, 1e-9)), [.. Enumerable.Repeat(new LaneWood(560), lanes)], DesMoinesYear.InTheOpen(split));
        var driver = new AdaptiveDriver(grid, law, StepControl.Forecast);
        driver.Stepper.State.AsSpan().Fill(0.7);
        const double Year = DesMoinesYear.Hours * 3600.0;
        while (driver.Time < Year / 4) driver.Advance(Year);

        var steps = driver.Accepted;
        var before = GC.GetAllocatedBytesForCurrentThread();
        while (driver.Time < Year / 2) driver.Advance(Year);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(driver.Accepted > steps + 80);
    }

    [Fact]
    public void Walking_and_reading_allocate_nothing_that_grows_with_the_steps()
    {
        var split = Split.Wedge(Length.FromMetres(0.11), Angle.FromDegrees(60), Length.FromMetres(0.4));
        var solver = new SplitSolver([SplitGrid.For(split)], MobilityTable.Of(new(560, 1e-9)), [new LaneWood(560)], DesMoinesYear.InTheOpen(split));
        solver.Moisture.Fill(0.7);
        solver.AdvanceTo(20 * 86400.0);
        var before = GC.GetAllocatedBytesForCurrentThread();
        solver.AdvanceTo(120 * 86400.0);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
