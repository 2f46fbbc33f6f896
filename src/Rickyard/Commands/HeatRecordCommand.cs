using System.CommandLine;
using Rickyard.HotBox;
using Rickyard.Core.Boxes.HeatTreatment;
using Rickyard.Core.Quantities;
using Rickyard.Screens;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary><c>rickyard heat-record</c>: which heat treatment schedules a log of core temperatures held, or those foreseen for a charge would hold.</summary>
internal sealed class HeatRecordCommand
{
    private static readonly TypedQuantity Accuracy = new(QuantityUnits.TemperatureDelta, 0, 5, "0 to 5 K", "0.5 K");

    private readonly Screen _screen;
    private readonly Argument<string> _log = new("log") { Description = "Table of core temperatures: a time column and one column a sensor with °C or °F in its head (docs/heat-treatment.md). Or a case file (.json) with a hot box, for a forecast." };
    private readonly Option<string> _accuracy = new("--accuracy") { Description = "Accuracy of the sensors at treatment temperature, taken off every reading.", HelpName = "quantity", DefaultValueFactory = _ => "0.5 K" };
    private readonly Option<bool> _json = new("--json") { Description = "JSON for machines." };

    private HeatRecordCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var record = new HeatRecordCommand(screen);
        var command = new TaskCommand("heat-record", "Which heat treatment schedules the coldest core of a batch held, and when.",
        [
            "rickyard heat-record cores.csv",
            "rickyard heat-record cores.csv --accuracy \"1 °F\" --json",
            "rickyard heat-record cabinet.json",
        ]) { record._log, record._accuracy, record._json };
        command.SetAction((parsed, cancellation) => Task.Run(() => record.Run(parsed, cancellation), cancellation));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_log);
        var reading = new OptionReading(parsed);
        if (!Accuracy.TryRead(parsed.GetValue(_accuracy) ?? "", _accuracy.Name, out var accuracy, out var problem)) reading.Wrong(problem);
        var foreseen = path.EndsWith(".json", StringComparison.OrdinalIgnoreCase);
        var log = foreseen ? Foresee(path, reading, cancellation) : Read(path, reading);
        if (log is null || reading.Problems.Count > 0)
        {
            _screen.Problems(path, reading.Problems);
            return ExitCode.BadInput;
        }

        var record = HeatRecord.Of(log, foreseen ? 0 : accuracy);
        if (parsed.GetValue(_json)) _screen.Output.WriteLine(HeatRecordJson.Write(record));
        else HeatRecordStory.Tell(record, _screen);
        return ExitCode.Done;
    }

    private static CoreLog? Foresee(string path, OptionReading reading, CancellationToken cancellation)
    {
        if (CaseFile.Read(path, reading) is not { } drying) return null;
        var weather = new WeatherSource(CaseFile.FolderOf(path)).ReadAll(drying);
        foreach (var problem in weather.Problems) reading.Wrong(problem);
        if (!weather.TryGet(out var scenarios)) return null;
        var log = ChargeHeatForecast.Run(drying, scenarios, cancellation);
        foreach (var problem in log.Problems) reading.Wrong(problem);
        return log.Value;
    }

    private static CoreLog? Read(string path, OptionReading reading)
    {
        var bytes = InputFiles.ReadBytes(path);
        foreach (var problem in bytes.Problems) reading.Wrong(problem);
        if (!bytes.TryGet(out var raw)) return null;
        var text = Core.Weather.WeatherText.Decode(raw, Path.GetFileName(path));
        foreach (var problem in text.Problems) reading.Wrong(problem);
        if (!text.TryGet(out var table)) return null;
        var log = CoreLogReader.Read(Path.GetFileName(path), table);
        foreach (var problem in log.Problems) reading.Wrong(problem);
        return log.Value;
    }
}
