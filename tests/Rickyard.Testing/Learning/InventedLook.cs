using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Testing.Learning;

/// <summary>Turns a planned look into an observation with a value.</summary>
internal static class InventedLook
{
    /// <summary>A pin reading's own error. [kg kg⁻¹]</summary>
    internal const double PinOwn = 0.010;

    /// <summary>The meter's error on this wood. [kg kg⁻¹]</summary>
    internal const double PinShared = 0.010;

    /// <summary>Error of an oven test. [kg kg⁻¹]</summary>
    internal const double OvenError = 0.010;

    /// <summary>Error of a weighing, relative.</summary>
    internal const double ScaleError = 0.004;

    /// <summary>Above this a meter only says wet, below the other only dry. [kg kg⁻¹]</summary>
    private const double Wet = 0.28, Dry = 0.06;

    /// <summary>The observation.</summary>
    internal static Observation Of(PlannedLook look, int row, double value)
    {
        var from = new Origin(look.Day, look.Piece, "", row, "an invented look");
        if (look.Place is { } place) return Pin(from, place, value);
        return look.IsOven ? new OvenObservation(from, OvenPart.Section, value, OvenError) : new MassObservation(from, value, ScaleError * value);
    }

    private static PinObservation Pin(Origin from, PinPlace place, double value)
    {
        var (bound, verdict) = value > Wet ? (Wet, MeterVerdict.AtLeast) : value < Dry ? (Dry, MeterVerdict.AtMost) : (value, MeterVerdict.Measured);
        return new(from, new(place), new(bound, ShownRange.Number, MeterScale.DouglasFir, 20), new(bound, bound - 0.02, bound + 0.02, verdict, PinOwn, PinShared, []));
    }
}
