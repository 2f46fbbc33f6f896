using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>A box without wood is two heat stores in a row, air and walls, which has an exact answer.</summary>
public sealed class EmptyBoxTests(ITestOutputHelper output)
{
    private const double Hours = 8, Watts = 60, Outside = 20;

    // So large that its air stores about as much heat as its walls; warmed by a few kelvin only, so that what depends on temperature hardly moves.
    private static readonly BoxDescription Hall = SampleBox.Cabinet.Shut() with
    {
        Volume = 40,
        WallHeatCapacity = 10000,
        WallConductance = 3,
        Heater = new(Watts, 1, 0, HeaterFuel.Electricity, 1),
        Fan = new(0.5, 0.05, 0),
    };

    [Fact]
    public void Empty_box_warms_like_two_heat_stores_in_a_row()
    {
        var exact = Exact(Hours * 3600);
        var (air, wall) = Reached(30);
        output.WriteLine($"air {air:0.0000} K, exact {exact.Air:0.0000}; wall {wall:0.0000}, exact {exact.Wall:0.0000}");
        Assert.Equal(exact.Air, air, 0.01 * exact.Air);
        Assert.Equal(exact.Wall, wall, 0.01 * exact.Wall);
    }

    [Fact]
    public void Steps_half_as_long_halve_the_error()
    {
        double[] walls = [.. new[] { 960.0, 480, 240, 120 }.Select(step => Reached(step).Wall)];
        double coarse = (walls[0] - walls[1]) / (walls[1] - walls[2]), fine = (walls[1] - walls[2]) / (walls[2] - walls[3]);
        output.WriteLine($"ratios {coarse:0.00}, {fine:0.00}");
        Assert.InRange(fine, 1.85, 2.15);
        Assert.InRange(coarse, 1.7, 2.3);
    }

    [Fact]
    public void Empty_box_ends_where_the_heater_meets_the_walls()
    {
        var trace = SampleBox.Run(SampleBox.Plan(Hall, 200, outsideCelsius: Outside), [], 30, 10);
        var loss = Hall.WallArea * Hall.WallConductance;
        Assert.Equal(Outside + Watts / loss, trace.Series.WallCelsius[^1], 1e-3);
        Assert.Equal(Outside + Watts / loss + Watts / (Hall.WallArea * Film), trace.Series.AirCelsius[^1], 0.1);
    }

    private static double Film => SurfaceTransfer.ConvectiveCoefficient(Hall.Fan.Speed, Hall.Height, Outside + 273.15 + 3);

    private static (double Air, double Wall) Reached(double step)
    {
        var trace = SampleBox.Run(
            SampleBox.Plan(Hall, 200, outsideCelsius: Outside), [], Hours / 24, 1, control: new StepControl(1e9, 1e9, step, step));
        return (trace.Series.AirCelsius[^1] - Outside, trace.Series.WallCelsius[^1] - Outside);
    }

    /// <summary>Rise of both over outside by the eigenvalues of the two stores.</summary>
    private static (double Air, double Wall) Exact(double time)
    {
        double kelvins = Outside + 273.15, vapor = 0.6 * SaturationPressure.OverWater(kelvins), ratio = Psychrometrics.HumidityRatio(vapor, 101325);
        double airStore = (101325 - vapor) * Hall.Volume / (287.042 * (kelvins + 3)) * Psychrometrics.HeatCapacity(ratio), wallStore = Hall.WallArea * Hall.WallHeatCapacity;
        double film = Hall.WallArea * Film, loss = Hall.WallArea * Hall.WallConductance;
        double a = film / airStore, b = film / wallStore, c = (film + loss) / wallStore;
        double half = (a + c) / 2, root = Math.Sqrt(half * half - (a * c - a * b)), slow = half - root, fast = half + root;
        double wallEnd = Watts / loss, airEnd = wallEnd + Watts / film;
        // Air rises as airEnd + p e^(-slow t) + q e^(-fast t), from 0 with a slope of Watts / airStore.
        double p = (fast * -airEnd + Watts / airStore) / (fast - slow), q = -airEnd - p;
        double air = airEnd + p * Math.Exp(-slow * time) + q * Math.Exp(-fast * time);
        double wall = wallEnd + p * (1 - slow / a) * Math.Exp(-slow * time) + q * (1 - fast / a) * Math.Exp(-fast * time);
        return (air, wall);
    }
}
