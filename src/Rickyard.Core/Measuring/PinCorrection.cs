using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>
/// From what a pin meter showed to moisture in this wood at this temperature: the reading is brought to 80 °F on its scale, read back to a resistance by the scale's row, and that read
/// as moisture by the wood's row (physics.md, P1 to P8).
/// </summary>
public static class PinCorrection
{
    /// <summary>Above this no pin meter tells more than "wet" (25 to 30 % by source: AS/NZS 1080.1 summary, Wengert, Wood Handbook ch. 13). [kg kg⁻¹]</summary>
    public const double Ceiling = 0.28;

    /// <summary>Below this none tells more than "very dry" (6 to 8 % by source: Wengert, Univ. of Tasmania). [kg kg⁻¹]</summary>
    public const double Floor = 0.06;

    /// <summary>Lowest and highest wood temperature read; beyond the published charts nothing is known. [°C]</summary>
    public const double ColdestCelsius = -20, HottestCelsius = 50;

    /// <summary>Wood whose temperature nobody knows, and its standard deviation: 0 to 35 °C is nearly all; judgement. [°C]</summary>
    private const double UsualCelsius = 20, UsualCelsiusSpread = 8;

    /// <summary>1.645 standard deviations hold 90 %.</summary>
    private const double Ninety = 1.6448536;

    /// <summary>Corrects a reading.</summary>
    /// <param name="reading">What the meter showed.</param>
    /// <param name="species">The wood.</param>
    /// <param name="place">Where the pins were; null where nobody said.</param>
    public static CorrectedReading Of(PinReading reading, Species species, PinPlace? place = null) => new ReadingInWood(reading, species, place).Correct();

    /// <summary>What a meter would show for a moisture: the way back. [kg kg⁻¹ on the meter's scale]</summary>
    /// <param name="moisture">Of the wood at the pins. [kg kg⁻¹]</param>
    /// <param name="species">The wood.</param>
    /// <param name="scale">The meter's scale.</param>
    /// <param name="celsius">Of the wood. [°C]</param>
    public static double Shown(double moisture, Species species, MeterScale scale, double celsius)
    {
        var (low, high) = (0.0, 1.0);
        for (var halving = 0; halving < 60; halving++)
        {
            var middle = (low + high) / 2;
            if (Moisture(middle, species, scale, celsius) < moisture) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Best moisture of a reading. [kg kg⁻¹]</summary>
    internal static double Moisture(double shown, Species species, MeterScale scale, double celsius) =>
        SpeciesRows.Of(species).Moisture(Megohm(shown, TemperatureCorrection.Of(100 * shown, celsius).Best, scale));

    /// <summary>Resistance at 80 °F behind a reading with so many points added. [MΩ]</summary>
    internal static double Megohm(double shown, double addPoints, MeterScale scale) => scale.Megohm(shown + addPoints / 100);

    /// <summary>One reading on its way.</summary>
    private sealed class ReadingInWood(PinReading reading, Species species, PinPlace? place)
    {
        private readonly SpeciesRows _rows = SpeciesRows.Of(species);
        private readonly double _celsius = Math.Clamp(reading.WoodCelsius ?? UsualCelsius, ColdestCelsius, HottestCelsius);

        internal CorrectedReading Correct()
        {
            var add = TemperatureCorrection.Of(100 * reading.Shown, _celsius);
            var moisture = At(add.Best);
            var shared = Shared(add, moisture);
            var own = ReadingError.Of(reading, place, _celsius);
            var half = Ninety * Math.Sqrt(own * own + Math.Pow(_rows.Spread(Megohm(reading.Shown, add.Best, reading.Scale)), 2) + Math.Pow(UnknownTemperature(), 2));
            var corrected = new CorrectedReading(
                moisture, Math.Max(0, At(add.Least) - half), At(add.Most) + half, MeterVerdict.Measured, own, shared, PinNotes.Of(reading, species, place, _rows, add, moisture));
            return Bounded(corrected);
        }

        private double At(double addPoints) => _rows.Moisture(Megohm(reading.Shown, addPoints, reading.Scale));

        /// <summary>Curve, published temperature corrections (their extremes taken for a 90 % range), and a temperature nobody knows.</summary>
        private double Shared(TemperatureCorrection add, double moisture)
        {
            var temperature = (At(add.Most) - At(add.Least)) / 2 / Ninety;
            var curve = _rows.Spread(Megohm(reading.Shown, add.Best, reading.Scale));
            return Math.Sqrt(curve * curve + temperature * temperature + Math.Pow(UnknownTemperature(), 2));
        }

        private double UnknownTemperature() => reading.WoodCelsius is not null ? 0 : Math.Abs(
            Moisture(reading.Shown, species, reading.Scale, UsualCelsius + UsualCelsiusSpread) - Moisture(reading.Shown, species, reading.Scale, UsualCelsius - UsualCelsiusSpread)) / 2;

        /// <summary>A reading off the scale, or beyond what a meter is good for, only bounds.</summary>
        private CorrectedReading Bounded(CorrectedReading corrected)
        {
            var ceiling = _rows.Ceiling(Ceiling);
            if (reading.Range == ShownRange.Over || (reading.Range == ShownRange.Number && corrected.Moisture >= ceiling))
            {
                var least = reading.Range == ShownRange.Over && corrected.Moisture < ceiling && reading.Shown > 0 ? corrected.Moisture : ceiling;
                return corrected with { Moisture = least, Low = least, High = WoodDensity.MaximumMoisture(species.BasicDensity.Value.KilogramsPerCubicMetre), Verdict = MeterVerdict.AtLeast };
            }

            if (reading.Range == ShownRange.Number && corrected.Moisture > Floor) return corrected;
            var most = reading.Range == ShownRange.Under && corrected.Moisture > Floor ? corrected.Moisture : Floor;
            return corrected with { Moisture = most, Low = 0, High = most, Verdict = MeterVerdict.AtMost };
        }
    }
}
