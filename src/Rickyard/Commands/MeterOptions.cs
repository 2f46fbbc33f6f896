using System.CommandLine;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard meter</c> takes.</summary>
internal sealed class MeterOptions
{
    /// <summary>[°C]</summary>
    public static TypedQuantity Wood { get; } = new(QuantityUnits.Temperature, -40, 110, "-40 to 110 °C", "27 °C");

    public Option<string> Species { get; } = new("--species") { Description = "The wood, such as hickory.", HelpName = "name" };

    public Option<string> Reading { get; } = new("--reading") { Description = "What the meter shows: a number such as 20, \"over\", \"under\", \">40\" or \"<6\".", HelpName = "number" };

    public Option<string> Temperature { get; } = new("--temperature") { Description = "Temperature of the wood at the pins, such as \"27 °C\" or \"40 °F\".", HelpName = "quantity" };

    public Option<string> Scale { get; } = new("--scale") { Description = "The scale or wood the meter is set to.", HelpName = "name", DefaultValueFactory = _ => "Douglas-fir" };

    public Option<string> Place { get; } = new("--place") { Description = "Where the pins are: end, side, face (a weathered split face) or core (a face just split).", HelpName = "place" };

    public Option<string> Band { get; } = new("--band") { Description = "The other way round: a band on this meter, such as \"18-20 %\", as moisture of the wood (of every wood without --species).", HelpName = "band" };

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines." };
}
