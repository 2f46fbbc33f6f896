using Rickyard.Commands;
using Rickyard.Dry;
using Rickyard.Screens;

var screen = Screen.OfConsole();
return CommandLine.Run(args, screen,
[
    DryCommand.Build(screen, new DryingEngine(TimeProvider.System), new WebPicture()),
    EmcCommand.Build(screen),
    AirCommand.Build(screen),
    SpeciesCommand.Build(screen),
]);
