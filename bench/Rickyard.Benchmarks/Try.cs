using System.Diagnostics;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
namespace Rickyard.Benchmarks;
internal static class Try
{
    static Surroundings Room(double c, double rh, double v, double size) => new(c + 273.15, rh * SaturationPressure.OverWater(c + 273.15), SurfaceTransfer.ConvectiveCoefficient(v, size, c + 273.15));
    static void Case(string name, Split s, double rho, Anatomy an, double m0, Surroundings air, double days, double every, double rate = 1, double[]? f = null)
    {
        var w = Stopwatch.StartNew();
        var solver = new SplitSolver([SplitGrid.For(s)], MobilityTable.Of(new(rho, WaterMobility.FreeWaterOf(an))), [new LaneWood(rho, rate)], AirSeries.Steady(air));
        solver.Moisture.Fill(m0); solver.SetCelsius(15);
        var r0 = solver.Read(0);
        Console.WriteLine($"{name}: {s.Describe()} mass {r0.Mass:0.00} kg, hc {air.ConvectiveCoefficient:0.0}");
        for (double d = 0; d <= days + 1e-9; d += every)
        {
            solver.AdvanceTo(d * 86400); var r = solver.Read(0);
            Console.WriteLine($"  d{d,6:0.0} mean {100 * r.Mean,6:0.00} core {100 * r.Core,6:0.00} shell {100 * r.Shell,6:0.00} end {100 * r.End,6:0.00} T {r.Celsius,5:0.0} mass {r.Mass:0.000} loss {100 * (1 - r.Mass / r0.Mass),5:0.0}% outside {r.OutsideShare:0.00}");
        }
        var rf = solver.Read(0);
        Console.WriteLine($"  steps {solver.Steps} {w.ElapsedMilliseconds} ms; balance {(r0.Mass - rf.Mass - solver.WaterGivenOff(0)) / r0.Mass:e2}");
    }
    public static void Run(string[] args)
    {
        Split W(double r, double a, double l) => Split.Wedge(Length.FromMetres(r), Angle.FromDegrees(a), Length.FromMetres(l));
        Case("hot A-like", W(0.10, 60, 0.36), 600, Anatomy.RingPorousOpen, 0.5, Room(70, .1, 1, .1), 14, 2);
        Case("hot small", W(0.07, 60, 0.36), 600, Anatomy.RingPorousOpen, 0.5, Room(70, .1, 1, .1), 14, 2);
        Case("hot large", W(0.14, 60, 0.40), 600, Anatomy.RingPorousOpen, 0.7, Room(70, .1, 1, .1), 14, 2);
        var birch = Split.FromMass(SplitShape.Wedge, Length.FromInches(18), Mass.FromKilograms(5), Density.FromKilogramsPerCubicMetre(480 * 1.8));
        Case("V04 birch basement", birch, 480, Anatomy.DiffusePorous, .8, Room(21, .35, .15, .12), 4, 1, Math.Sqrt(1.21));
        Case("V04 birch basement v.3 rh25", birch, 480, Anatomy.DiffusePorous, .8, Room(23, .25, .3, .12), 4, 1, Math.Sqrt(1.21));
        Case("V16 oak block", Split.Block(Length.FromInches(5), Length.FromInches(3), Length.FromInches(14)), 560, Anatomy.RingPorousOpen, .68, Room(25, .30, .2, .1), 19, 19);
        var beech = Split.FromMass(SplitShape.Wedge, Length.FromInches(12), Mass.FromKilograms(2), Density.FromKilogramsPerCubicMetre(560 * 1.75));
        Case("V13 beech stack", beech, 560, Anatomy.DiffusePorous, .75, Room(9, .78, 1, .1), 28, 7);
        Case("V13 beech stack w/ sunny", beech, 560, Anatomy.DiffusePorous, .75, Room(11, .72, 1.5, .1) with { AbsorbedRadiation = 20 }, 28, 7);
    }
}
