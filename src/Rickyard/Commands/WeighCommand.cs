using System.CommandLine;
using Rickyard.Screens;
using Rickyard.Weigh;

namespace Rickyard.Commands;

/// <summary><c>rickyard weigh</c>: moisture from a scale, an oven or a handful of readings.</summary>
internal sealed class WeighCommand
{
    private readonly Screen _screen;
    private readonly WeighOptions _options = new();

    private WeighCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var weigh = new WeighCommand(screen);
        var options = weigh._options;
        var command = new TaskCommand("weigh", "Moisture from a scale: a marked split, a sample in the oven or microwave; or how many splits to read.",
        [
            "rickyard weigh --start-mass \"3.20 kg\" --start-moisture \"72 % dry basis\" --mass \"2.50 kg\" --target \"20 % dry basis\"",
            "rickyard weigh --section \"98.55 g > 59.20 g\" --section \"92.1 g > 56.0 g\" --start-mass \"5 lb 3 oz\" --mass \"4 lb 1 oz\"",
            "rickyard weigh --oven \"0 h: 136 g; 12 h: 101.2 g; 16 h: 100.1 g\" --method \"ASTM D4442 B\"",
            "rickyard weigh --microwave \"0 min: 52.1 g; 20 min: 45 g; 21 min: 44.6 g\"",
            "rickyard weigh --probe \"18, 21, 25, 19, 22\" --json",
        ]) { options.StartMass, options.StartMoisture, options.Section, options.Mass, options.Target, options.Oven, options.Microwave, options.Method, options.Probe, options.Balance, options.Json };
        command.SetAction(weigh.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var reading = new OptionReading(parsed);
        var answer = new WeighQuestion(parsed, reading, _options).Answer();
        if (answer is null || reading.Problems.Count > 0)
        {
            _screen.Problems("rickyard weigh", reading.Problems);
            return ExitCode.BadInput;
        }

        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(WeighJson.Write(answer));
        else WeighStory.Tell(answer, _screen);
        return ExitCode.Done;
    }
}
