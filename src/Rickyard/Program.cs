using Rickyard.Commands;
using Rickyard.Dry;
using Rickyard.Learn;
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
    LearnCommand.Build(screen, new LearningEngine(TimeProvider.System), new ObservationSource(TimeProvider.System), new MeterBand(), new WebLearningPicture()),
    SplitSizeCommand.Build(screen, new SizeEngine(TimeProvider.System)),
    VerifyCommand.Build(screen),
    MeterCommand.Build(screen),
    EmcCommand.Build(screen),
    AirCommand.Build(screen),
    SpeciesCommand.Build(screen),
    HeatRecordCommand.Build(screen),
    WarmthCommand.Build(screen),
    WeighCommand.Build(screen),
]);
