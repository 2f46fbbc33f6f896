using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Testing.Learning;

/// <summary>Ten invented observations of an invented lot, one of them hardly right.</summary>
public static class SampleObservations
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ObservationFit> Ten { get; } =
    [
        Pin(2, 40, "", PinPlace.FreshCore, 0.46, MeterVerdict.AtLeast, "over range in a fresh core, 24 April 2026", new(39, 46, 53)) with { Value = 28 },
        new(new PromiseObservation(new(1, "", "", 3, "45 % dry basis promised, 16 March 2026"), 0.45), 45, new(32, 48, 71), "% dry basis", 0.08),
        Mass(4, 40, "7", 2.88, "2.88 kg, piece 7, 24 April 2026", new(2.83, 2.89, 2.95)),
        Mass(5, 40, "12", 2.83, "2.83 kg, piece 12, 24 April 2026", new(2.78, 2.83, 2.88)),
        Pin(6, 95, "", PinPlace.EndGrain, 0.16, MeterVerdict.Measured, "16 % in the end grain, 18 June 2026", new(13.1, 16.6, 20.4)),
        Pin(7, 95, "", PinPlace.SplitFace, 0.24, MeterVerdict.Measured, "24 % in a split face, 18 June 2026", new(19.8, 23.1, 27)),
        Mass(8, 120, "7", 2.52, "2.52 kg, piece 7, 13 July 2026", new(2.47, 2.52, 2.57)),
        new(new OvenObservation(new(120, "", "", 9, "27 % of a section in the oven, 13 July 2026"), OvenPart.Section, 0.27, 0.01), 27, new(22.6, 26, 29.4), "% dry basis", 0.03),
        Mass(10, 150, "12", 2.74, "2.74 kg, piece 12, 12 August 2026", new(2.31, 2.36, 2.41)) with { ChanceWrong = 0.97 },
        Pin(11, 150, "", PinPlace.FreshCore, 0.252, MeterVerdict.Measured, "25 % in a fresh core, 12 August 2026", new(21.6, 25.6, 29.9)),
    ];

    /// <summary>An under-range reading in the side of a piece.</summary>
    public static ObservationFit UnderRange { get; } =
        Pin(12, 150, "", PinPlace.Side, 0.07, MeterVerdict.AtMost, "under range in the side, 12 August 2026", new(9.8, 12.1, 15));

    /// <summary>Bark found loose.</summary>
    public static ObservationFit LooseBark { get; } =
        new(new SignObservation(new(130, "", "", 13, "bark loose, 23 July 2026"), WoodSign.BarkLoose, true), null, new(0, 0, 0), "chance", 0.1);

    private static ObservationFit Pin(int row, double day, string piece, PinPlace place, double moisture, MeterVerdict verdict, string words, Spread expected) => new(
        new PinObservation(
            new(day, piece, "", row, words), new(place), new(moisture, ShownRange.Number, MeterScale.DouglasFir, 20),
            new(verdict == MeterVerdict.AtLeast ? 0.28 : moisture, moisture - 0.025, moisture + 0.025, verdict, 0.012, 0.01, [])),
        100 * moisture, expected, "% dry basis", 0.04);

    private static ObservationFit Mass(int row, double day, string piece, double kilograms, string words, Spread expected) =>
        new(new MassObservation(new(day, piece, "", row, words), kilograms, 0.01), kilograms, expected, "kg", 0.02);
}
