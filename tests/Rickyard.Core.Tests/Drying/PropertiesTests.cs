using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

/// <summary>What must hold whatever the piece, the wood and the air; limits and symmetries, no source.</summary>
public sealed class PropertiesTests
{
    private const double Day = 86400, Week = 7 * Day;
    private const int Cases = 40;

    /// <summary>Other steps may move the mean of a week by this much, one point: worst within two kelvins of freezing, where free water stops and goes; elsewhere it is a tenth of that.</summary>
    private const double OtherSteps = 0.01;

    [Fact]
    public void Wood_in_balance_with_its_air_stays_as_it_is() => Holds(Situation.In(Situation.OpenAir), situation =>
    {
        var balance = Balance(situation);
        var solver = (situation with { Wet = balance, Dry = balance, Celsius = situation.Air.TemperatureKelvins - 273.15 }).Solver();
        solver.AdvanceTo(Week);
        return solver.Moisture.ToArray().All(moisture => Math.Abs(moisture - balance) < 1e-6);
    }, Cases);

    [Fact]
    public void No_cell_is_ever_drier_than_nothing_in_any_weather() => Holds(Situation.In(Situation.Weather), situation =>
    {
        var solver = situation.Solver();
        solver.AdvanceTo(2 * Week);
        return solver.Moisture.ToArray().All(moisture => moisture >= 0 && double.IsFinite(moisture));
    }, Cases);

    /// <summary>Without rain and dew the wood stays between its driest and wettest start and its balance with the air; allowed is what a step may err by, 0.3 points.</summary>
    [Fact]
    public void Every_part_stays_between_its_start_and_its_balance_with_the_air() => Holds(Situation.In(Situation.OpenAir).Where(NoDew), situation =>
    {
        const double allowed = 0.003;
        var balance = Balance(situation);
        double low = Math.Min(Math.Min(situation.Dry, situation.Wet), balance) - allowed, high = Math.Max(Math.Max(situation.Wet, situation.Dry), balance) + allowed;
        var solver = situation.Solver();
        for (var days = 1; days <= 16; days *= 2)
        {
            solver.AdvanceTo(days * Day);
            var reading = solver.Read(0);
            double[] parts = [reading.Mean, reading.Core, reading.Shell, reading.End];
            if (parts.Any(part => part < low || part > high)) return false;
        }

        return true;
    }, Cases);

    [Fact]
    public void Wood_that_loses_water_goes_on_losing_it_in_steady_air() => Holds(Situation.In(Situation.OpenAir).Where(NoDew), situation =>
    {
        var drying = situation with { Wet = Math.Max(situation.Wet, 0.4), Dry = Math.Max(situation.Dry, 0.35) };
        var solver = drying.Solver();
        solver.AdvanceTo(Day);
        var before = solver.Read(0).Mean;
        for (var days = 2; days <= 16; days *= 2)
        {
            solver.AdvanceTo(days * Day);
            var now = solver.Read(0).Mean;
            if (now > before + 1e-4) return false;
            before = now;
        }

        return true;
    }, Cases);

    /// <summary>Drier, faster air never leaves the wood wetter; allowed is what a step may err by, 0.3 points.</summary>
    [Fact]
    public void More_drive_is_never_slower() => Holds(Gen.Select(Situation.In(Situation.OpenAir).Where(NoDew), Gen.Double[0.3, 1], Gen.Double[1, 3]), given =>
    {
        var (situation, drier, faster) = given;
        var harder = situation with
        {
            Air = situation.Air with { VaporPressure = drier * situation.Air.VaporPressure, ConvectiveCoefficient = faster * situation.Air.ConvectiveCoefficient },
        };
        SplitSolver first = situation.Solver(), second = (harder.Air.VaporPressure <= situation.Air.VaporPressure ? harder : situation).Solver();
        first.AdvanceTo(Week);
        second.AdvanceTo(Week);
        var wetting = Balance(situation) > situation.Dry;
        return wetting || second.Read(0).Mean <= first.Read(0).Mean + 0.003;
    }, Cases);

    /// <summary>To the error of a step, 0.3 points, and not to rounding: the sweeps of a step take the axes in their order, and the core's sample points tie on planes of symmetry.</summary>
    [Fact]
    public void Block_lying_on_its_other_side_dries_alike() => Holds(Gen.Select(Gen.Double[0.03, 0.15], Gen.Double[0.03, 0.15], Gen.Double[0.2, 0.5], Situation.OpenAir), given =>
    {
        var (width, height, length, air) = given;
        SplitReading flat = OfBlock(width, height, length, air), upright = OfBlock(height, width, length, air);
        return Math.Abs(flat.Mean - upright.Mean) < 0.003 && Math.Abs(flat.Core - upright.Core) < 0.003 && Math.Abs(flat.Shell - upright.Shell) < 0.003;
    }, 15);

    [Fact]
    public void Four_members_side_by_side_dry_as_each_does_alone() => Holds(Gen.Select(Situation.In(Situation.Weather), Gen.Double[0.7, 1.4].Array[4]), given =>
    {
        var (situation, rates) = given;
        var woods = rates.Select(rate => situation.Wood with { Bound = rate }).ToArray();
        var grid = SplitGrid.For(situation.Split);
        var together = new SplitSolver([grid, grid, grid, grid], MobilityTable.Of(situation.Mobility), woods, AirSeries.Steady(situation.Air));
        for (var lane = 0; lane < 4; lane++) together.SetMoisture(lane, situation.Field(grid));
        together.SetCelsius(situation.Celsius);
        together.AdvanceTo(Week);
        return Enumerable.Range(0, 4).All(lane =>
        {
            var alone = (situation with { Wood = woods[lane] }).Solver();
            alone.AdvanceTo(Week);
            return Math.Abs(alone.Read(0).Mean - together.Read(lane).Mean) < OtherSteps;
        });
    }, 15);

    [Fact]
    public void Reports_in_between_change_nothing_that_matters() => Holds(Situation.In(Situation.OpenAir), situation =>
    {
        SplitSolver often = situation.Solver(), once = situation.Solver();
        for (var hour = 6; hour <= 168; hour += 6) often.AdvanceTo(hour * 3600.0);
        once.AdvanceTo(Week);
        return Math.Abs(often.Read(0).Mean - once.Read(0).Mean) < OtherSteps;
    }, Cases);

    [Fact]
    public void Wood_in_abundant_air_does_not_moisten_it() => Holds(Situation.In(Situation.OpenAir), situation =>
    {
        SplitSolver open = situation.Solver(), windy = (situation with { Air = situation.Air with { FreshAir = 1e6 } }).Solver();
        open.AdvanceTo(Week);
        windy.AdvanceTo(Week);
        return Math.Abs(open.Read(0).Mean - windy.Read(0).Mean) < 1e-4;
    }, 15);

    [Fact]
    public void Less_air_never_dries_faster() => Holds(Situation.In(Situation.ScantAir).Where(NoDew), situation =>
    {
        var scant = (situation with { Wet = Math.Max(situation.Wet, 0.4), Dry = Math.Max(situation.Dry, 0.35) }).Solver();
        var open = (situation with { Wet = Math.Max(situation.Wet, 0.4), Dry = Math.Max(situation.Dry, 0.35), Air = situation.Air with { FreshAir = double.PositiveInfinity } }).Solver();
        scant.AdvanceTo(Week);
        open.AdvanceTo(Week);
        return scant.Read(0).Mean >= open.Read(0).Mean - 0.003;
    }, Cases);

    private static void Holds<T>(Gen<T> gen, Func<T, bool> property, int cases) =>
        Assert.All(gen.Cases(cases), given => Assert.True(property(given), given?.ToString()));

    private static SplitReading OfBlock(double width, double height, double length, Surroundings air)
    {
        var block = Split.Block(Length.FromMetres(width), Length.FromMetres(height), Length.FromMetres(length));
        var solver = new SplitSolver([SplitGrid.For(block)], MobilityTable.Of(new(560, 1e-9)), [new LaneWood(560)], AirSeries.Steady(air));
        solver.Moisture.Fill(0.6);
        solver.AdvanceTo(Week);
        return solver.Read(0);
    }

    /// <summary>Equilibrium of this wood with its air. [kg kg⁻¹]</summary>
    private static double Balance(Situation situation)
    {
        var kelvins = situation.Air.TemperatureKelvins;
        return situation.Wood.Sorption * SorptionIsotherm.At(kelvins - 273.15).Moisture(Math.Min(1, situation.Air.VaporPressure / SaturationPressure.Of(kelvins)));
    }

    /// <summary>The wood starts no colder than the dew point, so that nothing condenses on it.</summary>
    private static bool NoDew(Situation situation) => SaturationPressure.Of(situation.Celsius + 273.15) > situation.Air.VaporPressure;
}
