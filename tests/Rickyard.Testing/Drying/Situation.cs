using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;

namespace Rickyard.Testing.Drying;

/// <summary>A random piece of random wood in random steady air.</summary>
/// <param name="Split">The piece.</param>
/// <param name="Mobility">Its kind of wood.</param>
/// <param name="Wood">What it has of its own.</param>
/// <param name="Wet">Wettest moisture at the start. [kg kg⁻¹]</param>
/// <param name="Dry">Driest moisture at the start. [kg kg⁻¹]</param>
/// <param name="Celsius">Wood temperature at the start. [°C]</param>
/// <param name="Air">What it meets.</param>
public sealed record Situation(Split Split, WaterMobility Mobility, LaneWood Wood, double Wet, double Dry, double Celsius, Surroundings Air)
{
    private const double Pressure = 101325;

    private static readonly Gen<LaneWood> Woods = Gen.Select(
        Gen.Double[380, 780], Gen.Double[-0.7, 0.7], Gen.Double[-0.7, 0.7], Gen.Double[-1.1, 1.1], Gen.Double[0.95, 1.11],
        (density, bound, free, bark, sorption) => new LaneWood(density, Math.Exp(bound), Math.Exp(free), LaneWood.UsualBarkConductance * Math.Exp(bark), sorption));

    private static readonly Gen<WaterMobility> Kinds = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2], (density, free) => new WaterMobility(400 + 120 * density, 3e-10 * Math.Pow(3, free)));

    /// <summary>Steady air without rain or sun, from hard frost to boiling, bone dry to saturated, that the wood cannot moisten.</summary>
    public static Gen<Surroundings> OpenAir { get; } = Gen.Select(Gen.Double[-25, 100], Gen.Double[0.02, 0.99], Gen.Double[2, 40], (celsius, humidity, convection) =>
        new Surroundings(celsius + 273.15, humidity * Math.Min(SaturationPressure.Of(celsius + 273.15), 0.95 * Pressure), convection));

    /// <summary>The same; the wood moistens it.</summary>
    public static Gen<Surroundings> ScantAir { get; } = Gen.Select(OpenAir, Gen.Double[-4, 0], (air, log) => air with { FreshAir = Math.Pow(10, log) });

    /// <summary>The same with rain and sun.</summary>
    public static Gen<Surroundings> Weather { get; } = Gen.Select(OpenAir, Gen.Double[0, 1e-3], Gen.Double[0, 1e-3], Gen.Double[-30, 150], (air, sides, ends, sun) =>
        air with { RainOnSides = sides, RainOnEnds = ends, AbsorbedRadiation = sun });

    /// <summary>Situations in such air.</summary>
    public static Gen<Situation> In(Gen<Surroundings> air) => Gen.Select(
        AnyPiece.OfAnyShape, Woods, Kinds, Gen.Double[0.04, 1], Gen.Double[0.2, 1], Gen.Double[-15, 80], air,
        (split, wood, kind, wet, part, celsius, surroundings) => new Situation(split, kind, wood, wet, part * wet, celsius, surroundings));

    /// <summary>One solver, its start field between <see cref="Dry"/> at the faces and <see cref="Wet"/> in the middle.</summary>
    public SplitSolver Solver(StepControl? control = null)
    {
        var grid = SplitGrid.For(Split);
        var solver = new SplitSolver([grid], MobilityTable.Of(Mobility), [Wood], AirSeries.Steady(Air), control);
        solver.SetMoisture(0, Field(grid));
        solver.SetCelsius(Celsius);
        return solver;
    }

    /// <summary>The start field: moister away from the faces.</summary>
    public double[] Field(SplitGrid grid)
    {
        var depths = new double[grid.Count];
        foreach (var point in SplitProbes.Sample(grid)) depths[point.Cell] += point.ToAnyFace * point.Volume / grid.Volumes[point.Cell];
        var deepest = depths.Max();
        return [.. depths.Select(depth => Dry + (Wet - Dry) * depth / deepest)];
    }
}
