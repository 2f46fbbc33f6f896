using Rickyard.Commands;
using Rickyard.Dry;
using Rickyard.Schedules;
using Rickyard.Screens;
using Rickyard.SplitSize;

var screen = Screen.OfConsole();
var engine = new DryingEngine(TimeProvider.System);
var picture = new WebPicture();
return CommandLine.Run(args, screen,
[
    DemoCommand.Build(screen, engine, picture),
    DryCommand.Build(screen, engine, picture),
    ChargeCommand.Build(screen, new ScheduleEngine(TimeProvider.System), new WebSchedulePicture()),
    SplitSizeCommand.Build(screen, new SizeEngine(TimeProvider.System)),
    VerifyCommand.Build(screen),
    EmcCommand.Build(screen),
    AirCommand.Build(screen),
    SpeciesCommand.Build(screen),
    HeatRecordCommand.Build(screen),
    WarmthCommand.Build(screen),
]);
