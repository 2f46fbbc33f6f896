using System.CommandLine;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Quantities;
using Rickyard.Schedules;
using Rickyard.Screens;

namespace Rickyard.Commands;

/// <summary><c>rickyard charge</c>: finds how to run a hot box, and when to pull which class, in words, JSON or a picture.</summary>
internal sealed class ChargeCommand
{
    private readonly Screen _screen;
    private readonly IScheduleEngine _engine;
    private readonly ISchedulePicture _picture;
    private readonly ChargeOptions _options = new();

    private ChargeCommand(Screen screen, IScheduleEngine engine, ISchedulePicture picture) => (_screen, _engine, _picture) = (screen, engine, picture);

    public static Command Build(Screen screen, IScheduleEngine engine, ISchedulePicture picture)
    {
        var charge = new ChargeCommand(screen, engine, picture);
        var options = charge._options;
        var command = new TaskCommand("charge", "How to run a hot box so that its charge is ready in time, and when to pull what.",
        [
            "rickyard charge cabinet.json",
            "rickyard charge cabinet.json --goal even --in \"10 days\" --picture plan.svg",
            "rickyard charge plywood-box.json --by 2026-03-20 --highest \"60 °C\" --json",
        ])
        {
            options.Case, options.Goal, options.By, options.In, options.Band, options.Highest, options.Members, options.Seed, options.Json, options.Picture,
        };

        // A search that is stopped still answers with its best so far, so the work itself is never dropped.
        command.SetAction((parsed, cancellation) => Task.Run(() => charge.Run(parsed, cancellation), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_options.Case);
        var reading = new OptionReading(parsed);
        var drying = CaseFile.Read(path, reading);
        var request = new ChargeQuestion(parsed, _options, reading).Read(drying);
        if (drying is null || reading.Problems.Count > 0) return Refuse(path, reading.Problems);
        var found = _engine.Run(drying, request, CaseFile.FolderOf(path), new ScreenProgress(_screen), cancellation);
        _screen.Progress(1);
        return found.TryGet(out var answer) ? Answer(parsed, answer) : Refuse(path, found.Problems);
    }

    private int Refuse(string about, IReadOnlyList<Problem> problems)
    {
        _screen.Problems(about, problems);
        return ExitCode.BadInput;
    }

    // The answer is printed even where the picture cannot be kept; the exit code then says so.
    private int Answer(ParseResult parsed, ScheduleAnswer answer)
    {
        if (answer.WasStopped) _screen.Say("Stopped before the end of the search: this is the best so far.");
        var problem = PictureFile.Keep(parsed.GetValue(_options.Picture), () => _picture.Svg(answer), () => _picture.Png(answer));
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(ScheduleJson.Write(answer));
        else ScheduleStory.Tell(answer, _screen);
        if (problem is null) return ExitCode.Done;
        _screen.Problems("rickyard charge", [problem]);
        return ExitCode.Failed;
    }
}
