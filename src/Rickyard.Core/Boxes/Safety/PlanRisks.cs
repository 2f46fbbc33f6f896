namespace Rickyard.Core.Boxes.Safety;

/// <summary>What of a plan can do harm.</summary>
/// <param name="plan">The plan.</param>
internal sealed class PlanRisks(BoxPlan plan)
{
    private const double ScaldingCelsius = 45;
    private const double HotRestCelsius = 40;
    private const double RoomMachineCelsius = 35;
    private const double CabinetVolume = 2;
    private const double SecondsPerHour = 3600;

    /// <summary>Something heats it.</summary>
    public bool Heated => plan.Box.Heater.Power > 0;

    /// <summary>A flame heats it.</summary>
    public bool Burns => Heated && plan.Box.Heater.Fuel == HeaterFuel.Gas;

    /// <summary>The sun heats it.</summary>
    public bool Glazed => plan.Box.Sun is not null;

    /// <summary>A fan carries the heat off, and can fail.</summary>
    public bool HeatNeedsFan => Heated && plan.Box.Fan.Power > 0;

    /// <summary>Its air can burn skin.</summary>
    public bool Scalds => Glazed || Reaches(ScaldingCelsius);

    /// <summary>Wood lies closed up and hot.</summary>
    public bool HotRest => plan.Stages.Any(stage => stage.Kind == StageKind.ClosedRest && stage.Celsius >= HotRestCelsius);

    /// <summary>A machine made for rooms stands in air that is too hot for it.</summary>
    public bool MachineTooHot => plan.Box.Dehumidifier is not null && (Glazed || Reaches(RoomMachineCelsius));

    /// <summary>It is small enough to have been a cabinet for food.</summary>
    public bool MayHoldFood => Heated && plan.Box.Volume <= CabinetVolume;

    /// <summary>What all its machines draw at once. [W]</summary>
    public double ElectricWatts => HeaterWatts + plan.Box.Fan.Power + MachineWatts;

    private double HeaterWatts => Heated && !Burns ? plan.Box.Heater.Power / plan.Box.Heater.Efficiency : 0;

    private double MachineWatts => plan.Box.Dehumidifier is { } machine ? 1000 * SecondsPerHour * machine.Capacity / machine.LitresPerKilowattHour : 0;

    private bool Reaches(double celsius) => Heated && plan.Stages.Any(stage => stage.Celsius >= celsius);
}
