using Rickyard.Commands;
using Rickyard.Dry;
using Rickyard.Schedules;
using Rickyard.Screens;

namespace Rickyard.Tests.Commands;

/// <summary>Runs a command line in this process, on a screen of fixed width, with an engine that invents its answer.</summary>
internal static class Typed
{
    public static Spoken Run(params string[] arguments) => Run(new InventedEngine(), arguments);

    public static Spoken Run(IDryingEngine engine, params string[] arguments) => Run(engine, new InventedScheduleEngine(), arguments);

    public static Spoken Run(IScheduleEngine engine, params string[] arguments) => Run(new InventedEngine(), engine, arguments);

    private static Spoken Run(IDryingEngine engine, IScheduleEngine schedules, string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        var screen = new Screen(output, error, 100);
        var code = CommandLine.Run(
            arguments, screen,
            [
                DryCommand.Build(screen, engine, new InventedPicture()), ChargeCommand.Build(screen, schedules, new InventedSchedulePicture()), MeterCommand.Build(screen), EmcCommand.Build(screen), AirCommand.Build(screen), SpeciesCommand.Build(screen),
                HeatRecordCommand.Build(screen), WarmthCommand.Build(screen), WeighCommand.Build(screen),
            ]);
        return new(code, output.ToString(), error.ToString());
    }
}
