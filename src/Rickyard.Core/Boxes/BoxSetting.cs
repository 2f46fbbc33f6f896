using Rickyard.Core.Quantities;

namespace Rickyard.Core.Boxes;

/// <summary>How a box is set during a stage.</summary>
/// <param name="SetKelvins">Thermostat; negative infinity with the heater off. [K]</param>
/// <param name="Vent">How the vent stands.</param>
/// <param name="LetsAirThrough">Whether vent and leaks pass air at all: not in a closed rest.</param>
/// <param name="InTheOpen">Whether the charge has been taken out of the box.</param>
internal sealed record BoxSetting(double SetKelvins, BoxVent Vent, bool LetsAirThrough, bool InTheOpen)
{
    internal static BoxSetting Of(BoxStage stage, BoxDescription box) => new(
        stage.Celsius is { } celsius ? celsius + Temperature.IcePointKelvins : double.NegativeInfinity,
        stage.Kind == StageKind.ClosedRest ? BoxVent.Shut : stage.Vent ?? box.Vent,
        stage.Kind != StageKind.ClosedRest,
        stage.Kind == StageKind.OpenRest);
}
