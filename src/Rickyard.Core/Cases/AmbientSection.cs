using Rickyard.Core.Boxes;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>Reads the air outside a box.</summary>
internal static class AmbientSection
{
    private static readonly string[] Kinds = ["steady", "weather", "normals"];
    private static readonly TypedQuantity Temperature = new(QuantityUnits.Temperature, -40, 60, "-40 to 60 °C", "20 °C");
    private static readonly BoxAmbient Usual = new(20, 0.50);

    /// <summary>The air; that of a heated room where it is left out.</summary>
    public static BoxAmbient Read(CaseObject box, CaseFindings findings)
    {
        if (!box.Has("ambient")) findings.Assume("The air outside the box was not given: a room of 20 °C and 50 % relative humidity.");
        if (box.Group("ambient", Kinds) is not { } ambient) return Usual;
        if (ambient.Keys.Count != 1) findings.Wrong(ambient.Path, ambient.Keys.Count == 0 ? "It names no air." : $"It names {CaseObject.Listed([.. ambient.Keys])} at once.", $"Give one of {CaseObject.Listed(Kinds)}.");
        if (ambient.Group("steady", "temperature", "humidity") is { } steady)
            return new(steady.NeededQuantity("temperature", Temperature) ?? Usual.Celsius, steady.NeededQuantity("humidity", CaseLimits.Humidity) ?? Usual.RelativeHumidity);
        return RackSection.Weather(ambient, findings) is { } weather ? Usual with { Weather = weather } : Usual;
    }
}
