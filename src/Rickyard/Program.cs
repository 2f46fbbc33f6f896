using Rickyard.Commands;
using Rickyard.Screens;

var screen = Screen.OfConsole();
return CommandLine.Run(args, screen, [EmcCommand.Build(screen), AirCommand.Build(screen), SpeciesCommand.Build(screen)]);
