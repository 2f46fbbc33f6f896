using System.CommandLine;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard weigh</c> takes.</summary>
internal sealed class WeighOptions
{
    /// <summary>[kg]</summary>
    public static TypedQuantity Weight { get; } = new(QuantityUnits.Mass, 0.0001, 500, "0.1 g to 500 kg", "5 lb 3 oz");

    /// <summary>Smallest step of a scale. [kg]</summary>
    public static TypedQuantity Step { get; } = new(QuantityUnits.Mass, 0.000_000_1, 1, "0.1 mg to 1 kg", "0.1 g");

    /// <summary>[kg kg⁻¹]</summary>
    public static TypedQuantity Green { get; } = new(QuantityUnits.Moisture, 0.01, 3, "1 to 300 % dry basis", "70 % dry basis");

    /// <summary>[kg kg⁻¹]</summary>
    public static TypedQuantity Wanted { get; } = new(QuantityUnits.Moisture, 0.03, 1, "3 to 100 % dry basis", "20 % dry basis");

    /// <summary>[d]</summary>
    public static TypedQuantity Elapsed { get; } = new(QuantityUnits.Duration, 0, 60, "0 to 60 days", "12 h");

    public Option<string> StartMass { get; } = Text("--start-mass", "quantity", "Mass of the marked split when its moisture was so, such as \"14.8 lb\".");

    public Option<string> StartMoisture { get; } = Text("--start-moisture", "quantity", "An assumed moisture at the start, such as \"80 % dry basis\"; it may be a fifth off.");

    public Option<string[]> Section { get; } = Several("--section", "masses", "Better: a slice from an end, as cut and oven-dry, such as \"98.55 g > 59.20 g\"; once for each end.");

    public Option<string[]> Mass { get; } = Several("--mass", "quantity", "Mass of the split now; several times for weighings before, in order.");

    public Option<string> Target { get; } = Text("--target", "quantity", "Moisture to pull it at, such as \"20 % dry basis\"; answers with the mass.");

    public Option<string> Oven { get; } = Text("--oven", "weighings", "A sample in the oven, such as \"0 h: 136 g; 12 h: 101.2 g; 16 h: 100.1 g\".");

    public Option<string> Microwave { get; } = Text("--microwave", "weighings", "A sample in the microwave, such as \"0 min: 52.1 g; 20 min: 45 g\".");

    public Option<string> Method { get; } = Text("--method", "name", "How it is dried; usual are \"ASTM D4442 B\" and \"medium-low microwave\".");

    public Option<string> Probe { get; } = Text("--probe", "readings", "Readings of several splits in % dry basis, such as \"18, 21, 25, 19, 22\".");

    public Option<string> Balance { get; } = Text("--balance", "quantity", "Smallest step of the scale; left out, the last digit you typed.");

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines." };

    /// <summary>Those of a marked split.</summary>
    public IReadOnlyList<Option> Tracking => [StartMass, StartMoisture, Section, Mass, Target];

    private static Option<string> Text(string name, string kind, string description) => new(name) { Description = description, HelpName = kind };

    private static Option<string[]> Several(string name, string kind, string description) => new(name) { Description = description, HelpName = kind };
}
