using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Learn;

/// <summary>What an observation is, for machines.</summary>
internal static class ObservationKind
{
    public static string Of(Observation observation) => observation switch
    {
        PinObservation => "pin",
        MassObservation => "mass",
        DryMassObservation => "dry_mass",
        OvenObservation => "oven",
        PromiseObservation => "promise",
        SignObservation => "sign",
        _ => "other",
    };

    /// <summary>Where it was taken, or null where it is of the whole piece.</summary>
    public static string? PlaceOf(Observation observation) => observation switch
    {
        PinObservation { Pins.Place: PinPlace.EndGrain } => "end_grain",
        PinObservation { Pins.Place: PinPlace.Side } => "side",
        PinObservation { Pins.Place: PinPlace.SplitFace } => "split_face",
        PinObservation => "fresh_core",
        OvenObservation oven => oven.Part switch { OvenPart.Section => "section", OvenPart.Core => "core", _ => "whole" },
        _ => null,
    };
}
