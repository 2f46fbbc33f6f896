using System.CommandLine;
using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Screens;

namespace Rickyard.Commands;

/// <summary><c>rickyard air</c>: everything about moist air from its temperature and one measure of its moisture.</summary>
internal sealed class AirCommand
{
    private readonly Screen _screen;
    private readonly Option<string> _temperature = new("--temperature") { Description = "Dry-bulb temperature, such as \"27 °C\" or \"80 °F\".", HelpName = "quantity" };
    private readonly Option<string> _humidity = new("--humidity") { Description = "Relative humidity, such as \"65 %\".", HelpName = "quantity" };
    private readonly Option<string> _dewPoint = new("--dew-point") { Description = "Or dew point (over water), such as \"12 °C\".", HelpName = "quantity" };
    private readonly Option<string> _wetBulb = new("--wet-bulb") { Description = "Or wet bulb, such as \"19 °C\".", HelpName = "quantity" };
    private readonly Option<string> _elevation = new("--elevation") { Description = "Elevation above the sea, such as \"1600 m\" or \"5280 ft\"; left out: the sea.", HelpName = "quantity" };
    private readonly Option<string> _pressure = new("--pressure") { Description = "Or air pressure at the place, such as \"840 hPa\".", HelpName = "quantity" };
    private readonly Option<bool> _json = new("--json") { Description = "JSON for machines." };

    private AirCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var air = new AirCommand(screen);
        var command = new TaskCommand("air", "All properties of moist air.",
        [
            "rickyard air --temperature \"27 °C\" --humidity \"50 %\"",
            "rickyard air --temperature \"80 °F\" --wet-bulb \"67 °F\" --elevation \"5280 ft\"",
            "rickyard air --temperature \"70 °C\" --dew-point \"30 °C\" --json",
        ]) { air._temperature, air._humidity, air._dewPoint, air._wetBulb, air._elevation, air._pressure, air._json };
        command.SetAction(air.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var reading = new OptionReading(parsed);
        var air = Read(reading);
        if (air is null || reading.Problems.Count > 0)
        {
            _screen.Problems("rickyard air", reading.Problems);
            return ExitCode.BadInput;
        }

        var sheet = AirSheet.Of(air);
        if (parsed.GetValue(_json)) _screen.Output.WriteLine(JsonText.Object(writer => sheet.ForEach(line => writer.Number(line.Key, line.Value, line.Decimals + 2))));
        else Print(air, sheet, reading);
        return ExitCode.Done;
    }

    private void Print(MoistAir air, List<AirLine> sheet, OptionReading reading)
    {
        _screen.Paragraph($"Air of {air.Temperature} and {air.RelativeHumidity} takes dew below {air.DewOrFrostPoint} and keeps wood at {Core.Wood.EquilibriumMoisture.From(air)} (EMC).");
        if (!reading.Has(_elevation) && !reading.Has(_pressure)) _screen.Paragraph("Elevation was not given: the sea.");
        _screen.Table("lrl", ["property", "value", "unit"], sheet.Select(line => (IReadOnlyList<string>)[line.Name, line.Text, line.Unit]));
    }

    private MoistAir? Read(OptionReading reading)
    {
        var celsius = reading.Needed(_temperature, AirQuantities.Temperature);
        var humidity = reading.Quantity(_humidity, AirQuantities.Humidity);
        var dewPoint = reading.Quantity(_dewPoint, AirQuantities.Temperature);
        var wetBulb = reading.Quantity(_wetBulb, AirQuantities.Temperature);
        var pressure = PressureOf(reading);
        var given = new Option[] { _humidity, _dewPoint, _wetBulb }.Where(reading.Has).ToList();
        if (given.Count != 1) reading.Wrong("air", given.Count == 0 ? "Nothing is said of its moisture." : $"Its moisture is given {given.Count} times.", "Give one of --humidity, --dew-point and --wet-bulb.");
        if (celsius is null || reading.Problems.Count > 0) return null;
        var temperature = Temperature.FromCelsius(celsius.Value);
        var made = humidity is { } share ? MoistAir.FromRelativeHumidity(temperature, RelativeHumidity.FromFraction(share), pressure)
            : dewPoint is { } dew ? MoistAir.FromDewPoint(temperature, Temperature.FromCelsius(dew), pressure)
            : MoistAir.FromWetBulb(temperature, Temperature.FromCelsius(wetBulb!.Value), pressure);
        foreach (var problem in made.Problems) reading.Wrong(problem);
        return made.Value;
    }

    private Pressure PressureOf(OptionReading reading)
    {
        var metres = reading.Quantity(_elevation, AirQuantities.Elevation);
        var pascals = reading.Quantity(_pressure, AirQuantities.Pressure);
        if (reading.Has(_elevation) && reading.Has(_pressure)) reading.Wrong("--pressure", "Both elevation and pressure are given.", "Give one of them.");
        return pascals is { } given ? Pressure.FromPascals(given) : StandardPressure.AtElevation(metres ?? 0);
    }
}
