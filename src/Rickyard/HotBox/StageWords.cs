using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>Stages, shelves and limits of a box by name.</summary>
internal static class StageWords
{
    /// <summary>"drying at 70 °C".</summary>
    public static string Of(BoxStage stage) => stage.Kind switch
    {
        StageKind.OpenRest => "open rest out of the box",
        _ => $"{Of(stage.Kind)}{(stage.Celsius is { } celsius ? Invariant($" at {celsius:0.#} °C") : ", heater off")}",
    };

    /// <summary>"closed rest".</summary>
    public static string Of(StageKind kind) => kind switch
    {
        StageKind.Drying => "drying",
        StageKind.Equalizing => "equalizing",
        StageKind.ClosedRest => "closed rest",
        _ => "open rest",
    };

    /// <summary>"warm".</summary>
    public static string Of(ShelfPlace shelf) => shelf switch
    {
        ShelfPlace.Warm => "warm",
        ShelfPlace.Middle => "middle",
        _ => "cool",
    };

    /// <summary>"heater".</summary>
    public static string Of(BoxLimit limit) => limit switch
    {
        BoxLimit.Heater => "heater",
        BoxLimit.Vapor => "vapour",
        BoxLimit.Surface => "surface",
        BoxLimit.Inside => "inside",
        _ => "none",
    };
}
