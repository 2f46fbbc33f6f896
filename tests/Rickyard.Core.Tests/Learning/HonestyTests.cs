using MathNet.Numerics.Distributions;
using Rickyard.Testing.Learning;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

/// <summary>A small seeded part of the study in bench/honesty.md.</summary>
public sealed class HonestyTests
{
    private const int Lots = 32;

    /// <summary>A false alarm in a thousand, for each of some twenty figures in this class.</summary>
    private const double FalseAlarm = 0.001;

    private static readonly SyntheticLots Maker = new(StudyPlan.Ten, 96, 2);
    private static readonly Lazy<HonestyReport> Report = new(() => HonestyStudy.Run(Maker, Lots, [0, 10]));

    [Fact]
    public void Ranks_of_truths_are_flat() => Assert.All(Report.Value.Histograms, histogram => Assert.True(histogram.Chance() > FalseAlarm, $"{histogram.Name}: {string.Join(" ", histogram.Counts())}"));

    [Fact]
    public void Nine_in_ten_truths_lie_in_the_band_of_nine_tenths() => Assert.All(Report.Value.Stages, stage =>
    {
        // Two-sided binomial bounds about 90 %.
        var binomial = new Binomial(0.9, Lots);
        var (fewest, most) = (Quantile(binomial, FalseAlarm / 2), Quantile(binomial, 1 - FalseAlarm / 2));
        Assert.InRange(stage.Inside, fewest, most);
    });

    [Fact]
    public void Ten_looks_sharpen_the_forecast()
    {
        var (before, after) = (Report.Value.Stages[0], Report.Value.Stages[1]);
        Assert.True(after.MiddleScore < 0.85 * before.MiddleScore, $"{before.MiddleScore} {after.MiddleScore}");
        Assert.True(after.UnseenScore < before.UnseenScore);
    }

    [Fact]
    public void Lot_unlike_its_prior_is_found_out()
    {
        var scores = WrongPriorStudy.Run(Maker, 6, [0, 10]);
        Assert.True(scores[1].Error < 0.5 * scores[0].Error, $"{scores[0].Error} {scores[1].Error}");
    }

    private static int Quantile(Binomial binomial, double chance) => Enumerable.Range(0, Lots + 1).First(inside => binomial.CumulativeDistribution(inside) >= chance);
}
