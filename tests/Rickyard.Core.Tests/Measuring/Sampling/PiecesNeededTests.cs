using Rickyard.Core.Measuring.Sampling;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Sampling;

public sealed class PiecesNeededTests
{
    [Theory]
    [InlineData("n_for_2pct_90conf_student_t", 2, 0.90)]
    [InlineData("n_for_2pct_95conf_student_t", 2, 0.95)]
    [InlineData("n_for_1pct_90conf_student_t", 1, 0.90)]
    [InlineData("n_for_3pct_90conf_student_t", 3, 0.90)]
    public void Whole_table_comes_out(string column, double halfWidth, double confidence)
    {
        var rows = ReferenceTable.Read("Measuring/pieces_needed.csv");
        Assert.Equal(12, rows.Count);
        Assert.All(rows, row => Assert.Equal((int)row.Number(column), PiecesNeeded.For(row.Number("sd_between_pieces_pct_mc"), halfWidth, confidence)));
    }

    [Theory]
    [InlineData("90", 0.90)]
    [InlineData("95", 0.95)]
    public void Every_factor_of_the_table_comes_out(string column, double confidence)
    {
        var rows = ReferenceTable.Read("Measuring/t_factors.csv");
        Assert.Equal(11, rows.Count);
        Assert.All(rows, row =>
        {
            var pieces = (int)row.Number("n_pieces");
            Assert.Equal(row.Number($"t_two_sided_{column}"), PiecesNeeded.Factor(pieces, confidence), 0.00051);
            Assert.Equal(row.Number($"half_width_per_sd_{column}"), PiecesNeeded.HalfWidth(1, pieces, confidence), 0.00051);
        });
    }

    // S1 to S3, derived: 4 and 3 % between pieces, two points at 90 %; 2.132 x 3 / sqrt(5).
    [Fact]
    public void Worked_examples_come_out()
    {
        Assert.Equal((13, 9), (PiecesNeeded.For(4, 2, 0.9), PiecesNeeded.For(3, 2, 0.9)));
        Assert.Equal(2.86, PiecesNeeded.HalfWidth(3, 5, 0.9), 0.01);
    }

    [Theory]
    [InlineData(0.3, 0.02)]
    [InlineData(0.04, 0.0005)]
    public void One_piece_fewer_is_not_enough(double sd, double halfWidth)
    {
        var needed = PiecesNeeded.For(sd, halfWidth, 0.9);
        Assert.True(PiecesNeeded.HalfWidth(sd, needed, 0.9) <= halfWidth && PiecesNeeded.HalfWidth(sd, needed - 1, 0.9) > halfWidth);
    }

    [Fact]
    public void Pieces_all_alike_need_two() => Assert.Equal(2, PiecesNeeded.For(0, 0.02, 0.9));

    [Theory]
    [InlineData(-1, 1, 0.9)]
    [InlineData(double.NaN, 1, 0.9)]
    [InlineData(1, 0, 0.9)]
    [InlineData(1, 1, 1)]
    public void Nonsense_is_refused(double sd, double halfWidth, double confidence) => Assert.Throws<ArgumentOutOfRangeException>(() => PiecesNeeded.For(sd, halfWidth, confidence));

    [Fact]
    public void Probe_gives_mean_spread_wettest_and_how_many()
    {
        var probe = new ProbedPieces([0.18, 0.21, 0.25, 0.19, 0.22]);
        Assert.Equal(0.21, probe.Mean, 1e-12);
        Assert.Equal(0.0274, probe.Spread, 0.0001);
        Assert.Equal((0.25, PiecesNeeded.For(2.7386, 2, 0.9)), (probe.Wettest, probe.Needed));
    }
}
