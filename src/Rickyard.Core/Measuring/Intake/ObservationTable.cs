using System.Globalization;
using CsvHelper;
using NodaTime;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Writes observations as a table that reads back as the same observations: moistures in % dry basis, masses in kg, temperatures in °C.</summary>
public static class ObservationTable
{
    /// <summary>Digits kept of a percent, a mass or a temperature.</summary>
    private const int Digits = 10;

    /// <summary>The table, in UTF-8.</summary>
    /// <param name="observations">In the order wanted.</param>
    /// <param name="start">First day of their case.</param>
    /// <param name="hasClasses">Whether their case has more than one class, so that a piece names its own.</param>
    public static byte[] Write(IReadOnlyList<Observation> observations, LocalDate start, bool hasClasses)
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            csv.WriteRecord([.. ReadingColumns.All]);
            foreach (var observation in observations)
            {
                var from = observation.From;
                var (kind, place, value, unit, scale, temperature) = Found(observation);
                csv.WriteRecord([ReadingTime.Written(start, from.Day), Piece(from, hasClasses), KindWords.Of(kind), place, value, unit, scale, temperature, ""]);
            }
        }

        return bytes.ToArray();
    }

    private static string Piece(Origin from, bool hasClasses) => !hasClasses ? from.Piece : from.Piece.Length > 0 ? $"{from.Class}/{from.Piece}" : from.Class;

    private static (ReadingKind Kind, string Place, string Value, string Unit, string Scale, string Temperature) Found(Observation observation) => observation switch
    {
        PinObservation pin => (ReadingKind.Pin, PinPlaceText.Written(pin.Pins), Shown(pin.Reading), "%", pin.Reading.Scale.Name, pin.Reading.WoodCelsius is { } celsius ? $"{Number(celsius)} °C" : ""),
        MassObservation mass => (ReadingKind.Weighing, "", Spread(mass.Kilograms, mass.Spread), "kg", "", ""),
        DryMassObservation dry => (ReadingKind.OvenDryMass, "", Spread(dry.Kilograms, dry.Spread), "kg", "", ""),
        OvenObservation oven => (ReadingKind.Oven, OvenRow.Written(oven.Part), Spread(100 * oven.Moisture, 100 * oven.Spread), "% dry basis", "", ""),
        PromiseObservation promise => (ReadingKind.Promise, "", Number(100 * promise.Moisture), "% dry basis", "", ""),
        SignObservation sign => (ReadingKind.Sign, SignRow.Written(sign.Sign), sign.Seen ? "yes" : "no", "", "", ""),
        _ => throw SameSpot.UnknownKind(observation),
    };

    private static string Shown(PinReading reading) => reading.Range switch
    {
        ShownRange.Number => Number(100 * reading.Shown),
        ShownRange.Over => reading.Shown > 0 ? $">{Number(100 * reading.Shown)}" : "over",
        _ => reading.Shown > 0 ? $"<{Number(100 * reading.Shown)}" : "under",
    };

    private static string Spread(double value, double spread) => $"{Number(value)} ± {Number(spread)}";

    private static string Number(double value) => Math.Round(value, Digits).ToString(CultureInfo.InvariantCulture);
}
