using System.Globalization;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Tables;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>
/// The 60 heating times of Wood Handbook Table 20-4 (green hardwood squares and boards in hot humid air until the centre is at 56 °C) against the heat
/// field. Air speed is not printed with the table; it is an input here.
/// </summary>
public static class HeatingTimes
{

    private const double StartFahrenheit = 60, TargetFahrenheit = 133, ChamberFahrenheit = 157;

    /// <summary>Length of the pieces: not printed; four feet, so that the ends do not matter. [in]</summary>
    private const double LengthInches = 48;

    private const double LookEverySeconds = 60, GiveUpSeconds = 36000;

    /// <summary>Predict all 60.</summary>
    /// <param name="speed">Air speed. [m s⁻¹]</param>
    public static IReadOnlyList<HeatingTime> Run(double speed) => [.. Published().Select(row => Predict(row, speed))];

    /// <summary>The table, nothing predicted yet.</summary>
    private static List<HeatingTime> Published() =>
        [.. DataRow.Read("Verification/heating_times").Select(row => new HeatingTime(row.Text("species"), row.Text("size_in"), row.Number("wet_bulb_depression_C"), row.Number("heating_time_min"), double.NaN))];

    private static HeatingTime Predict(HeatingTime row, double speed)
    {
        var sides = row.Size.Split('x').Select(Number).Order().ToArray();
        var (density, green, anatomy) = Wood(row.Species);
        var block = Split.Block(Length.FromInches(sides[1]), Length.FromInches(sides[0]), Length.FromInches(LengthInches));
        var split = new HeatedSplit(
            SplitGrid.For(block), MobilityTable.Of(new(density, WaterMobility.FreeWaterOf(anatomy))), new(density),
            AirSeries.Steady(Chamber(row.Depression, speed, Length.FromInches(sides[0]).Metres)), green, Temperature.FromFahrenheit(StartFahrenheit).Celsius);
        var seconds = split.TimeToReach(Temperature.FromFahrenheit(TargetFahrenheit).Celsius, LookEverySeconds, GiveUpSeconds) ?? double.PositiveInfinity;
        return row with { PredictedMinutes = seconds / 60 };
    }

    private static Surroundings Chamber(double depression, double speed, double size)
    {
        var dry = Temperature.FromFahrenheit(ChamberFahrenheit);
        var air = MoistAir.FromWetBulb(dry, dry + TemperatureDelta.FromKelvins(-depression), Pressure.StandardAtmosphere).Value
            ?? throw new InvalidOperationException("The chamber's air is possible by its definition.");
        return new(dry.Kelvins, air.VaporPressure.Pascals, SurfaceTransfer.ConvectiveCoefficient(speed, size, dry.Kelvins));
    }

    /// <summary>Density, green moisture and anatomy. American basswood is not in the species table: 320 kg m⁻³ and 105 % (mean of 81 and 133), Wood Handbook Tables 5-3a and 4-1, from memory.</summary>
    private static (double Density, double Green, Anatomy Anatomy) Wood(string name)
    {
        if (name == "basswood") return (320, 1.05, Anatomy.DiffusePorous);
        var found = SpeciesCatalogue.Find(name == "aspen" ? "quaking aspen" : name == "red oak" ? "northern red oak" : name).Value
            ?? throw new InvalidOperationException($"{name} is in the species table.");
        return (found.BasicDensity.Value.KilogramsPerCubicMetre, found.GreenMoisture.Mean, found.Anatomy);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
