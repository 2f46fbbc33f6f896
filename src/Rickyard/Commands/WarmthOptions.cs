using System.CommandLine;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard warmth</c> takes.</summary>
internal sealed class WarmthOptions
{
    /// <summary>[m]</summary>
    public static TypedQuantity Size { get; } = new(QuantityUnits.Length, 0.01, 0.5, "1 cm to 50 cm", "7 cm");

    /// <summary>[m s⁻¹]</summary>
    public static TypedQuantity AirSpeed { get; } = new(QuantityUnits.Speed, 0, 20, "0 to 20 m/s", "1 m/s");

    /// <summary>[°C]</summary>
    public static TypedQuantity Air { get; } = new(QuantityUnits.Temperature, -10, 99, "-10 to 99 °C", "70 °C");

    /// <summary>[kg kg⁻¹]</summary>
    public static TypedQuantity Moisture { get; } = new(QuantityUnits.Moisture, 0.03, 0.6, "3 to 60 % dry basis", "19 % dry basis");

    public Option<string> Species { get; } = new("--species") { Description = "The wood.", HelpName = "name", DefaultValueFactory = _ => "post oak" };

    public Option<string> Width { get; } = Quantity("--width", "Width of a wedge of 60° with bark, green, 16 inches long.", "7 cm");

    public Option<string> From { get; } = Quantity("--from", "The cooler air.", "20 °C");

    public Option<string> To { get; } = Quantity("--to", "The warmer air.", "70 °C");

    public Option<string> Humidity { get; } = Quantity("--humidity", "Relative humidity of the cooler air.", "60 %");

    public Option<string> ToHumidity { get; } = new("--to-humidity") { Description = "Relative humidity of the warmer air; left out: the cooler air is warmed and nothing added.", HelpName = "quantity" };

    public Option<string> Target { get; } = Quantity("--target", "Moisture that core and mean are to reach.", "19 % dry basis");

    public Option<string> Speed { get; } = Quantity("--speed", "Air speed, the same in both.", "1 m/s");

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines." };

    private static Option<string> Quantity(string name, string description, string usual) => new(name) { Description = description, HelpName = "quantity", DefaultValueFactory = _ => usual };
}
