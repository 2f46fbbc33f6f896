using Rickyard.Core.Air;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>Reads air that stays as it is for a while.</summary>
internal static class SteadyAir
{
    public static readonly string[] Keys = ["temperature", "humidity", "speed"];

    public static SteadyPeriod? Read(CaseObject? air, double? days, CaseFindings findings)
    {
        if (air is null) return null;
        var celsius = air.NeededQuantity("temperature", CaseLimits.AirTemperature);
        var humidity = air.NeededQuantity("humidity", CaseLimits.Humidity);
        if (!air.Has("speed")) findings.Assume("The speed of the air was not given: still indoor air.");
        var speed = air.Quantity("speed", CaseLimits.AirSpeed);
        if (celsius is null || humidity is null) return null;
        AskAir(air, celsius.Value, humidity.Value, findings);
        return new(days, celsius.Value, humidity.Value, speed);
    }

    // Near and above the boiling point the vapour would press more than the whole air.
    private static void AskAir(CaseObject air, double celsius, double humidity, CaseFindings findings)
    {
        var asked = MoistAir.FromRelativeHumidity(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), Pressure.StandardAtmosphere);
        foreach (var problem in asked.Problems) findings.Wrong(problem with { Field = air.PathOf("humidity") });
    }
}
