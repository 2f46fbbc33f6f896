using System.Diagnostics;
using Rickyard.Core.Air;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Racks;
using Rickyard.Core.Weather;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
namespace Rickyard.Benchmarks;
internal static class Try
{
    private static Surroundings Room(double c, double rh, double v, double size) => new(c + 273.15, rh * SaturationPressure.OverWater(c + 273.15), SurfaceTransfer.ConvectiveCoefficient(v, size, c + 273.15));
    private static void Case(string name, Split s, double rho, Anatomy an, double m0, Surroundings air, double days, double every, double rate = 1, double[]? f = null)
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
    private static void Rack(string name, string species, Split s, double m0, string place, RackDescription rack, NodaTime.LocalDate start, double days, double every, double? rate = null)
    {
        var sp = SpeciesCatalogue.Find(species).Value!;
        var wn = new WeatherName(null, place);
        var c = new DryingCase { Name = name, Species = sp, BasicDensity = sp.BasicDensity.Value.KilogramsPerCubicMetre, RateFactor = rate, Split = s, Start = new(m0, null, null, false, 10, start), Periods = [new RackPeriod(null, wn, rack)], Days = days, ReportEvery = every };
        var w = Stopwatch.StartNew();
        var sc = WeatherScenario.FromNormals(NormalsCatalogue.Find(place).Value!);
        var r = DryingForecast.Run(c, new(64), new Dictionary<WeatherName, WeatherScenario> { [wn] = sc });
        Console.WriteLine($"{name}: {s.Describe()} rate {sp.RateFactor.Median:0.00} {w.ElapsedMilliseconds} ms  window from {r.Window.From} until {r.Window.Until} chance {r.Window.ChanceReady}");
        for (var i = 0; i < r.Days.Length; i++) Console.WriteLine($"  d{r.Days[i],6:0.0} mean {100 * r.Typical.Mean[i],6:0.0} core {100 * r.Typical.Core[i],6:0.0} [{100 * r.LowTenth.Core[i]:0.0} {100 * r.Median.Core[i]:0.0} {100 * r.HighTenth.Core[i]:0.0}] shell {100 * r.Typical.Shell[i],5:0.0} end {100 * r.Typical.End[i],5:0.0} T {r.Typical.CoreCelsius[i],5:0.0} loss {100 * r.Typical.LossFraction[i],5:0.0} emc {100 * r.AirEquilibrium[i]:0.0} out {r.SurfaceShare[i]:0.00}");
    }
    public static void Run(string[] args)
    {
        if (args is [_, "heat"])
        {
            foreach (var speed in new[] { 1.0, 2.0, 3.0 })
            {
            var misses = new Dictionary<string, List<double>> { ["0.0"] = [], ["5.6"] = [] };
            foreach (var line in File.ReadLines("tests/Rickyard.Testing/Reference/Drying/heating_times_table_20_4.csv").Where(l => !l.StartsWith('#')).Skip(1))
            {
                var c = line.Split(',');
                var size = c[1].Split('x').Select(double.Parse).ToArray();
                var name = c[0] switch { "red oak" => "northern red oak", "basswood" => "yellow-poplar", "aspen" => "quaking aspen", var n => n };
                var sp = SpeciesCatalogue.Find(name).Value!;
                var rho = sp.BasicDensity.Value.KilogramsPerCubicMetre * (c[0] == "basswood" ? 0.32 / 0.40 : 1);
                double t = 157.0, tw = t - double.Parse(c[2]) * 1.8;
                var air = MoistAir.FromWetBulb(Temperature.FromFahrenheit(t), Temperature.FromFahrenheit(tw), Pressure.StandardAtmosphere).Value!;
                var block = Split.Block(Length.FromInches(Math.Max(size[0], size[1])), Length.FromInches(Math.Min(size[0], size[1])), Length.FromInches(48));
                var h = SurfaceTransfer.ConvectiveCoefficient(speed, Math.Min(size[0], size[1]) * 0.0254, Temperature.FromFahrenheit(t).Kelvins);
                var series = AirSeries.Steady(new(Temperature.FromFahrenheit(t).Kelvins, air.VaporPressure.Pascals, h));
                var green = sp.GreenMoisture.Mean; if (c[0] == "basswood") green = 1.05;
                var hs = new HeatedSplit(SplitGrid.For(block), MobilityTable.Of(new(rho, WaterMobility.FreeWaterOf(sp.Anatomy))), new(rho), series, green, (60 - 32) / 1.8);
                var time = hs.TimeToReach((133 - 32) / 1.8, 60, 36000) / 60 ?? double.NaN;
                var published = double.Parse(c[3]);
                misses[c[2]].Add((time - published) / published);
                if (speed == 2) Console.WriteLine($"{c[0],-12} {c[1],-6} {c[2]}  published {published,4} predicted {time,6:0.0}  {100 * (time - published) / published,5:0} %  h {h:0.0} M {green:0.00}");
            }
            foreach (var (k, v) in misses) Console.WriteLine($"speed {speed}: depression {k}: median abs {100 * v.Select(Math.Abs).Order().ElementAt(v.Count / 2):0.0} %, median {100 * v.Order().ElementAt(v.Count / 2):0.0} worst {100 * v.Max(Math.Abs):0.0}");
            }
            return;
        }
        if (args is [_, "year"])
        {
            var sc = WeatherScenario.FromNormals(NormalsCatalogue.Find("Des Moines, Iowa").Value!);
            var w = Stopwatch.StartNew();
            var hours = sc.Member(3, new(2025, 4, 1, 0, 0), 8760); Console.WriteLine($"weather {w.ElapsedMilliseconds} ms");
            w.Restart(); var sp = W(0.09, 60, 0.406);
            var air = RackAir.Surroundings(hours, new(RackCover.Top, RackSun.Full, RackWind.Open, 1), new(sp.SurfaceDiameter, sp.Length)); Console.WriteLine($"rack {w.ElapsedMilliseconds} ms");
            w.Restart(); var series = AirSeries.Of(air, 3600); Console.WriteLine($"series {w.ElapsedMilliseconds} ms");
            foreach (var lanes in new[] { 1, 4, 4, 4, 4, 4, 4, 4 })
            {
                w.Restart();
                var solver = new SplitSolver([.. Enumerable.Repeat(0, lanes).Select(i => SplitGrid.For(sp.ScaledAcross(1 + 0.1 * i)))], MobilityTable.Of(new(560, 1e-9)), [.. Enumerable.Repeat(0, lanes).Select(i => new LaneWood(560, 1 + .2 * i))], series);
                solver.Moisture.Fill(.75); solver.SetCelsius(10);
                Console.Write($"  setup {w.ElapsedMilliseconds} ms ");
                w.Restart(); solver.AdvanceTo(365 * 86400.0);
                Console.WriteLine($"lanes {lanes} steps {solver.Steps} {w.ElapsedMilliseconds} ms, {1e3 * w.ElapsedMilliseconds / (solver.Steps.Accepted + solver.Steps.Rejected) / lanes:0} us/step/member");
            }
            return;
        }
        if (args.Length > 1) {
            Rack("Des Moines oak", "northern red oak", W(0.09, 60, 0.406), .75, "Des Moines, Iowa", new(RackCover.Top, RackSun.Full, RackWind.Open, 1), new(2025, 4, 1), 365, 30);
            Rack("Des Moines oak 4rows", "northern red oak", W(0.09, 60, 0.406), .75, "Des Moines, Iowa", new(RackCover.Top, RackSun.Full, RackWind.Open, 4), new(2025, 4, 1), 365, 60);
            Rack("V05 maple NJ", "Norway maple", Split.FromMass(SplitShape.Wedge, Length.FromInches(16), Mass.FromKilograms(4.644), Density.FromKilogramsPerCubicMetre(520 * 1.718)), .718, "Newark, New Jersey", new(RackCover.Top, RackSun.Full, RackWind.Open, 1), new(2015, 7, 6), 64, 8);
            Rack("V10 oak Germany", "European oak", W(0.11, 60, 0.33), .75, "Berlin", new(RackCover.Top, RackSun.Part, RackWind.Open, 1), new(2023, 10, 1), 304, 38);
            Rack("V11 birch Fairbanks", "paper birch", W(0.10, 60, 0.406), .57, "Fairbanks, Alaska", new(RackCover.Top, RackSun.Full, RackWind.Open, 1), new(2010, 5, 1), 120, 15);
            Rack("V12 birch Fairbanks tarp", "paper birch", W(0.10, 60, 0.406), .57, "Fairbanks, Alaska", new(RackCover.Tarp, RackSun.Full, RackWind.Open, 1), new(2010, 5, 1), 120, 15);
            Rack("V13 beech NI", "European beech", W(0.113, 60, 0.305), .75, "Malin Head", new(RackCover.None, RackSun.Part, RackWind.Open, 1), new(2016, 4, 1), 28, 7);
            return; }

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
