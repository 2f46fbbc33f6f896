using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Reads what a pin meter showed. Its display is dry basis unless the row says that this meter shows wet basis.</summary>
/// <param name="correct">From a reading to moisture in a wood.</param>
internal sealed class PinRow(Func<PinReading, Species, PinPlace?, CorrectedReading> correct)
{
    private static readonly TypedQuantity Temperature = new(QuantityUnits.Temperature, -40, 110, "-40 to 110 °C", "12 °C");

    public Sighting? Read(GivenReading given, IntakeWood wood, RowFaults faults)
    {
        var pins = PinPlaceText.Read(given, faults);
        var scale = Scale(given, faults);
        var celsius = Celsius(given, faults);
        var text = MoistureText.Read(given, faults);
        var display = text is null ? null : faults.Kept(ShownText.Read(text.Number, given.FieldOf(ReadingColumns.Value)));
        if (faults.Any || display is null) return null;
        var shown = MoistureText.Fraction(display.Shown, text!.Basis);
        if (shown > 1)
        {
            faults.Wrong(ReadingColumns.Value, $"{Echo.Of(text.Number)} % wet basis is more than any pin meter shows.", "Give what the display shows, 0 to 50 on wet basis.");
            return null;
        }

        var reading = new PinReading(shown, display.Range, scale!, celsius);
        return new(Spoken(reading, pins!), text.Basis ?? MoistureBasis.Dry, from => new PinObservation(from, pins!, reading, correct(reading, wood.Species, pins!.Place)));
    }

    private static MeterScale? Scale(GivenReading given, RowFaults faults) => given[ReadingColumns.Scale] is { Length: > 0 } text
        ? faults.Kept(MeterScale.Find(text, given.FieldOf(ReadingColumns.Scale)))
        : MeterScale.DouglasFir;

    private static double? Celsius(GivenReading given, RowFaults faults)
    {
        if (given[ReadingColumns.Temperature] is not { Length: > 0 } text) return null;
        if (Temperature.TryRead(text, given.FieldOf(ReadingColumns.Temperature), out var celsius, out var problem)) return celsius;
        faults.Wrong(problem);
        return null;
    }

    private static string Spoken(PinReading reading, Pins pins)
    {
        var range = reading.Range switch { ShownRange.Over => "over ", ShownRange.Under => "under ", _ => "" };
        return (reading.Range != ShownRange.Number && reading.Shown <= 0 ? $"{range}range " : Invariant($"{range}{100 * reading.Shown:0.#} % ")) + PinPlaceText.Spoken(pins);
    }
}
