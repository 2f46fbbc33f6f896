using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class ConservationTests(ITestOutputHelper output)
{
    private static readonly Length Long = Length.FromMetres(0.4), Wide = Length.FromMetres(0.12);

    public static TheoryData<string> Pieces => ["wedge", "bare wedge", "half round", "round", "inner wedge", "block"];

    // a year of hours on a bare rack: sun, frost, dew, rain; the books are kept face by face, the mass is read from the cells
    [Theory]
    [MemberData(nameof(Pieces))]
    public void Mass_lost_in_a_year_outdoors_is_the_water_given_off(string piece)
    {
        var split = Piece(piece);
        Balance(Solver([split], [new LaneWood(560)], DesMoinesYear.InTheOpen(split)));
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Mass_lost_by_four_unlike_members_is_the_water_each_gave_off(string piece)
    {
        var split = Piece(piece);
        Split[] splits = [split, split.ScaledAcross(0.7), split.ScaledAcross(1.3), split];
        LaneWood[] woods = [new(560), new(480, 1.5, 2), new(640, 0.6, 0.5, 2e-9), new(560, Sorption: 1.1)];
        Balance(Solver(splits, woods, DesMoinesYear.InTheOpen(split)));
    }

    [Fact]
    public void Sealed_up_wood_keeps_its_water()
    {
        var split = Piece("block");
        var air = AirSeries.Steady(new(303.15, 2000, 4, FreshAir: 0));
        var solver = Solver([split], [new LaneWood(560)], air);
        var before = solver.Read(0).Mass;
        solver.AdvanceTo(60 * 86400);
        Assert.Equal(before, solver.Read(0).Mass, 1e-4 * before);
    }

    private void Balance(SplitSolver solver)
    {
        double[] start = [.. Enumerable.Range(0, solver.Lanes).Select(lane => solver.Read(lane).Mass)];
        solver.AdvanceTo(DesMoinesYear.Hours * 3600.0);
        for (var lane = 0; lane < solver.Lanes; lane++)
        {
            double lost = start[lane] - solver.Read(lane).Mass, given = solver.WaterGivenOff(lane), water = start[lane] - solver.DryMass(lane);
            output.WriteLine($"lost {lost:0.000} kg of {water:0.000}, difference {(lost - given) / water:0.0e0} of the water, {solver.Steps.Accepted} steps");
            Assert.InRange(Math.Abs(lost - given) / water, 0, 1e-10);
            Assert.InRange(lost, 0.1 * water, water);
        }
    }

    private static SplitSolver Solver(Split[] splits, LaneWood[] woods, AirSeries air)
    {
        var solver = new SplitSolver([.. splits.Select(split => SplitGrid.For(split))], MobilityTable.Of(new(560, 1e-9)), woods, air);
        solver.Moisture.Fill(0.8);
        solver.SetCelsius(5);
        return solver;
    }

    private static Split Piece(string name) => name switch
    {
        "wedge" => Split.Wedge(Wide, Angle.FromDegrees(60), Long),
        "bare wedge" => Split.Wedge(Wide, Angle.FromDegrees(60), Long, bark: false),
        "half round" => Split.HalfRound(Wide, Long),
        "round" => Split.Round(Wide, Long),
        "inner wedge" => Split.InnerWedge(Length.FromMetres(0.05), Wide, Angle.FromDegrees(50), Long),
        _ => Split.Block(Wide, Length.FromMetres(0.09), Long),
    };
}
