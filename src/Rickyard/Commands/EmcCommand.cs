using System.CommandLine;
using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Commands;

/// <summary><c>rickyard emc</c>: the moisture wood comes to in air, and the air that keeps wood at a moisture.</summary>
internal sealed class EmcCommand
{
    private static readonly double[] TableHumidities = [0.10, 0.20, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 0.95];
    private static readonly double[] TableCelsius = [-10, 0, 10, 20, 30, 40, 50, 60, 70, 80];

    private readonly Screen _screen;
    private readonly Option<string> _temperature = new("--temperature") { Description = "Temperature of air and wood, such as \"27 °C\" or \"80 °F\".", HelpName = "quantity" };
    private readonly Option<string> _humidity = new("--humidity") { Description = "Relative humidity of the air, such as \"65 %\".", HelpName = "quantity" };
    private readonly Option<string> _moisture = new("--moisture") { Description = "The other way round: moisture of the wood, such as \"12 % dry basis\".", HelpName = "quantity" };
    private readonly Option<bool> _table = new("--table") { Description = "A table over temperature and humidity." };
    private readonly Option<bool> _json = new("--json") { Description = "JSON for machines." };

    private EmcCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var emc = new EmcCommand(screen);
        var command = new TaskCommand("emc", "The moisture that wood comes to in air (EMC), and back.",
        [
            "rickyard emc --temperature \"20 °C\" --humidity \"65 %\"",
            "rickyard emc --temperature \"70 °F\" --moisture \"19 % dry basis\"",
            "rickyard emc --table",
        ]) { emc._temperature, emc._humidity, emc._moisture, emc._table, emc._json };
        command.SetAction(emc.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var json = parsed.GetValue(_json);
        var reading = new OptionReading(parsed);
        var celsius = parsed.GetValue(_table) ? reading.Quantity(_temperature, AirQuantities.Temperature) : reading.Needed(_temperature, AirQuantities.Temperature);
        var humidity = reading.Quantity(_humidity, AirQuantities.Humidity);
        var moisture = reading.Quantity(_moisture, AirQuantities.Moisture);
        AskWhich(parsed, reading);
        if (celsius is { } t && humidity is { } h) AskAir(t, h, reading);
        if (reading.Problems.Count > 0)
        {
            _screen.Problems("rickyard emc", reading.Problems);
            return ExitCode.BadInput;
        }

        if (parsed.GetValue(_table)) Table(celsius, json);
        else if (humidity is { } given) Forward(Temperature.FromCelsius(celsius!.Value), RelativeHumidity.FromFraction(given), json);
        else Back(Temperature.FromCelsius(celsius!.Value), MoistureContent.FromFraction(moisture!.Value), json);
        return ExitCode.Done;
    }

    private void AskWhich(ParseResult parsed, OptionReading reading)
    {
        var asked = (parsed.GetValue(_table) ? 1 : 0) + (reading.Has(_humidity) ? 1 : 0) + (reading.Has(_moisture) ? 1 : 0);
        if (asked == 1) return;
        reading.Wrong("emc", asked == 0 ? "It is not said what is asked." : "More than one thing is asked.", "Give one of --humidity, --moisture and --table.");
    }

    private static void AskAir(double celsius, double humidity, OptionReading reading)
    {
        var air = MoistAir.FromRelativeHumidity(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), Pressure.StandardAtmosphere);
        foreach (var problem in air.Problems) reading.Wrong(problem with { Field = "--humidity" });
    }

    private void Forward(Temperature temperature, RelativeHumidity humidity, bool json)
    {
        var spread = EquilibriumMoisture.Spread(temperature, humidity);
        if (json)
        {
            _screen.Output.WriteLine(JsonText.Object(writer =>
            {
                writer.Number("temperature_c", temperature.Celsius, 3);
                writer.Number("relative_humidity_pct", humidity.Percent, 3);
                writer.Number("emc_pct_dry", spread.Mean.PercentDry, 3);
                writer.Number("emc_adsorption_pct_dry", spread.Adsorption.PercentDry, 3);
                writer.Number("emc_desorption_pct_dry", spread.Desorption.PercentDry, 3);
            }));
            return;
        }

        _screen.Paragraph($"Wood in air of {temperature} and {humidity} comes to {spread.Mean}.");
        _screen.Paragraph($"Wood that dries stops higher, near {spread.Desorption}; drier wood that gains water stops near {spread.Adsorption} (hysteresis).");
        if (humidity.Fraction >= 0.95) _screen.Paragraph("From 95 % relative humidity up one point of humidity moves this by more than a point: no sensor tells it.");
    }

    private void Back(Temperature temperature, MoistureContent moisture, bool json)
    {
        var mean = EquilibriumMoisture.HumidityOver(temperature, moisture);
        var drying = EquilibriumMoisture.HumidityOver(temperature, MoistureContent.FromFraction(moisture.Fraction / EquilibriumMoisture.DesorptionFactor));
        var wetting = EquilibriumMoisture.HumidityOver(temperature, MoistureContent.FromFraction(moisture.Fraction / EquilibriumMoisture.AdsorptionFactor));
        if (json)
        {
            _screen.Output.WriteLine(JsonText.Object(writer =>
            {
                writer.Number("temperature_c", temperature.Celsius, 3);
                writer.Number("moisture_pct_dry", moisture.PercentDry, 3);
                writer.Number("relative_humidity_pct", mean.Percent, 3);
                writer.Number("relative_humidity_drying_pct", drying.Percent, 3);
                writer.Number("relative_humidity_wetting_pct", wetting.Percent, 3);
            }));
            return;
        }

        if (mean.Fraction >= 1)
        {
            _screen.Paragraph($"Wood of {moisture} at {temperature} is above fibre saturation ({MoistureContent.FromFraction(FiberSaturation.OfIsotherm(temperature.Celsius))}): it dries in any air short of 100.0 % relative humidity.");
            return;
        }

        _screen.Paragraph($"Wood of {moisture} at {temperature} is at rest in air of {mean}.");
        _screen.Paragraph($"Wood that has dried down to it needs air of {drying}; wood that has gained water up to it, {wetting} (hysteresis).");
    }

    private void Table(double? celsius, bool json)
    {
        var rows = celsius is { } one ? [one] : TableCelsius;
        if (json)
        {
            _screen.Output.WriteLine(JsonText.Object(writer => JsonTable(writer, rows)));
            return;
        }

        _screen.Paragraph("EMC, % dry basis, over relative humidity (across) and temperature (down); wood that dries stops about a tenth higher, wood that gains water a tenth lower.");
        _screen.Table(
            new string('r', 1 + TableHumidities.Length),
            ["°C", .. TableHumidities.Select(humidity => Invariant($"{100 * humidity:0} %"))],
            rows.Select(row => (IReadOnlyList<string>)[Invariant($"{row:0.#}"), .. TableHumidities.Select(humidity => Invariant($"{Emc(row, humidity):0.0}"))]));
    }

    private static void JsonTable(System.Text.Json.Utf8JsonWriter writer, IReadOnlyList<double> rows)
    {
        writer.WriteStartArray("relative_humidity_pct");
        foreach (var humidity in TableHumidities) writer.Number(100 * humidity, 1);
        writer.WriteEndArray();
        writer.WriteStartArray("rows");
        foreach (var row in rows)
        {
            writer.WriteStartObject();
            writer.Number("temperature_c", row, 3);
            writer.WriteStartArray("emc_pct_dry");
            foreach (var humidity in TableHumidities) writer.Number(Emc(row, humidity), 3);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static double Emc(double celsius, double humidity) =>
        EquilibriumMoisture.From(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity)).PercentDry;
}
