using System.CommandLine;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using Rickyard.Screens;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary><c>rickyard dry</c>: runs a case and tells when the core is ready, in words, JSON, a table or a picture.</summary>
internal sealed class DryCommand
{
    private readonly Screen _screen;
    private readonly IDryingEngine _engine;
    private readonly IRunPicture _picture;
    private readonly DryOptions _options = new();

    private DryCommand(Screen screen, IDryingEngine engine, IRunPicture picture) => (_screen, _engine, _picture) = (screen, engine, picture);

    public static Command Build(Screen screen, IDryingEngine engine, IRunPicture picture)
    {
        var dry = new DryCommand(screen, engine, picture);
        var options = dry._options;
        var command = new TaskCommand("dry", "When the wood of a case file is ready inside, and how sure that is.",
        [
            "rickyard dry oak.json",
            "rickyard dry oak.json --band \"15-18 %\" --picture oak.svg",
            "rickyard dry oak.json --json --csv oak.csv --members 256 --seed 7",
        ]) { options.Case, options.Json, options.Csv, options.Picture, options.Members, options.Seed, options.Band };
        command.SetAction((parsed, cancellation) => Task.Run(() => dry.Run(parsed, cancellation), cancellation));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_options.Case);
        var reading = new OptionReading(parsed);
        var request = Request(parsed, reading);
        var drying = CaseFile.Read(path, reading);
        if (drying is null || reading.Problems.Count > 0) return Refuse(path, reading.Problems);
        var answer = _engine.Run(drying, request, CaseFile.FolderOf(path), new ScreenProgress(_screen), cancellation);
        _screen.Progress(1);
        return answer.TryGet(out var run) ? Answer(parsed, run) : Refuse(path, answer.Problems);
    }

    private int Refuse(string about, IReadOnlyList<Core.Quantities.Problem> problems)
    {
        _screen.Problems(about, problems);
        return ExitCode.BadInput;
    }

    private DryingRequest Request(ParseResult parsed, OptionReading reading)
    {
        var band = BandText.Read(parsed.GetValue(_options.Band) ?? "", reading);
        var (members, seed) = (parsed.GetValue(_options.Members), parsed.GetValue(_options.Seed));
        EnsembleCheck.Ask(members, seed, reading);
        if (parsed.GetValue(_options.Csv) is { } path && OutputFiles.Check(path, _options.Csv.Name) is { } problem) reading.Wrong(problem);
        PictureFile.Ask(parsed.GetValue(_options.Picture), reading);
        return new(members, seed, band?.Low ?? 0, band?.High ?? 0);
    }

    // The answer is printed even where a file cannot be kept; the exit code then says so.
    private int Answer(ParseResult parsed, DryingRun run)
    {
        var problem = KeepTable(parsed.GetValue(_options.Csv), run)
            ?? PictureFile.Keep(parsed.GetValue(_options.Picture), () => _picture.Svg(run), () => _picture.Png(run));
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(RunJson.Write(run));
        else RunStory.Tell(run, _screen);
        if (problem is null) return ExitCode.Done;
        _screen.Problems("rickyard dry", [problem]);
        return ExitCode.Failed;
    }

    private static Core.Quantities.Problem? KeepTable(string? path, DryingRun run) => path is null ? null : OutputFiles.Write(path, "--csv", RunCsv.Write(run));
}
