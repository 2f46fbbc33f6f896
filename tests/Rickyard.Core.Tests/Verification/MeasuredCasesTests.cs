using Rickyard.Core.Verification;
using Xunit;

namespace Rickyard.Core.Tests.Verification;

public class MeasuredCasesTests
{
    [Fact]
    public void Every_case_names_its_source_and_what_was_assumed() => Assert.All(MeasuredCases.All, measured =>
    {
        Assert.NotEmpty(measured.Source);
        Assert.NotEmpty(measured.Assumed);
        Assert.Contains(measured.Mark, new[] { "table", "text", "derived" });
        Assert.True((measured.Low ?? 0) <= measured.High);
    });

    [Theory]
    [InlineData(9.5, 0, 2.4)]
    [InlineData(13.3, 0, 1.4)]
    [InlineData(9.0, 0.5, 2.9)]
    [InlineData(14.3, 1.0, 2.4)]
    public void Range_misses_outside_only_and_the_middle_everywhere(double value, double fromRange, double fromMiddle)
    {
        var birch = MeasuredCases.All.Single(measured => measured.Name == "V04");
        Assert.Equal(fromRange, birch.FromRange(value), 1e-9);
        Assert.Equal(fromMiddle, birch.FromMiddle(value), 1e-9);
    }

    [Theory]
    [InlineData(30, 0)]
    [InlineData(60, 2)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity)]
    public void Upper_bound_is_missed_above_it_only(double days, double miss)
    {
        var maple = MeasuredCases.All.Single(measured => measured.Name == "V05");
        Assert.Equal(miss, maple.FromRange(days));
        Assert.Equal(miss, maple.FromMiddle(days));
    }
}
