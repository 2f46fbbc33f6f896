using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>One reading as it stands in the curves.</summary>
/// <param name="Fit">The reading.</param>
/// <param name="Shape">Its mark.</param>
/// <param name="Moisture">Where it stands; null where it has no moisture. [kg kg⁻¹]</param>
/// <param name="Low">Foot of its error bar. [kg kg⁻¹]</param>
/// <param name="High">Head of its error bar. [kg kg⁻¹]</param>
/// <param name="Verdict">A value, or a bound.</param>
internal sealed record ReadingMark(ObservationFit Fit, MarkShape Shape, double? Moisture, double Low, double High, MeterVerdict Verdict = MeterVerdict.Measured)
{
    /// <summary>From standard deviations to the half width of 9 in 10.</summary>
    private const double NineInTen = 1.645;

    /// <summary>Every reading of a run, in order of time.</summary>
    public static IReadOnlyList<ReadingMark> Of(LearningRun run) => [.. run.Observations.Select(fit => Of(run, fit)).OrderBy(mark => mark.Fit.Observation.From.Day)];

    private static ReadingMark Of(LearningRun run, ObservationFit fit) => fit.Observation switch
    {
        PinObservation pin => new(fit, ShapeOf(pin.Pins.Place), pin.Corrected.Moisture, pin.Corrected.Low, pin.Corrected.High, pin.Corrected.Verdict),
        OvenObservation oven => With(fit, MarkShape.Oven, oven.Moisture, oven.Spread),
        MassObservation mass when DryMass(run, mass.From) is { } dry => With(fit, MarkShape.Mass, mass.Kilograms / dry - 1, mass.Spread / dry),
        PromiseObservation promise => new(fit, MarkShape.Promise, promise.Moisture, promise.Moisture, promise.Moisture),
        _ => new(fit, MarkShape.Tick, null, 0, 0),
    };

    private static ReadingMark With(ObservationFit fit, MarkShape shape, double moisture, double spread) =>
        new(fit, shape, moisture, moisture - NineInTen * spread, moisture + NineInTen * spread);

    private static MarkShape ShapeOf(PinPlace place) => place switch
    {
        PinPlace.FreshCore => MarkShape.Core,
        PinPlace.SplitFace => MarkShape.Face,
        PinPlace.Side => MarkShape.Side,
        _ => MarkShape.End,
    };

    /// <summary>Likely dry mass of a marked split, or null for one that is not. [kg]</summary>
    private static double? DryMass(LearningRun run, Origin from) => run.Pieces.FirstOrDefault(piece => piece.Piece == from.Piece) is { } piece
        ? LearningWords.At(run, piece.Median.MassKilograms, run.Today) / (1 + LearningWords.At(run, piece.Median.Mean, run.Today))
        : null;
}
