using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>What makes two observations the same reading: when, on what, where, and what was found.</summary>
internal static class SameSpot
{
    /// <summary>Time, piece, kind and place.</summary>
    public static object Of(Observation observation) =>
        (observation.From.Day, observation.From.Class.ToUpperInvariant(), observation.From.Piece.ToUpperInvariant(), observation.GetType(), PlaceOf(observation));

    /// <summary>What was found there.</summary>
    public static object Found(Observation observation) => observation switch
    {
        PinObservation pin => pin.Reading,
        MassObservation mass => (mass.Kilograms, mass.Spread),
        DryMassObservation dry => (dry.Kilograms, dry.Spread),
        OvenObservation oven => (oven.Moisture, oven.Spread),
        PromiseObservation promise => promise.Moisture,
        SignObservation sign => sign.Seen,
        _ => throw UnknownKind(observation),
    };

    /// <summary>The moisture it tells, where it tells one. [kg kg⁻¹]</summary>
    public static double MoistureOf(Observation observation) => observation switch
    {
        PinObservation pin => pin.Reading.Shown,
        OvenObservation oven => oven.Moisture,
        PromiseObservation promise => promise.Moisture,
        _ => throw UnknownKind(observation),
    };

    /// <summary>A kind of observation that nobody wrote a row for: a mistake of the program.</summary>
    public static ArgumentException UnknownKind(Observation observation) => new($"{observation.GetType().Name} is not read from a table.", nameof(observation));

    private static object? PlaceOf(Observation observation) => observation switch
    {
        PinObservation pin => pin.Pins,
        OvenObservation oven => oven.Part,
        SignObservation sign => sign.Sign,
        _ => null,
    };
}
