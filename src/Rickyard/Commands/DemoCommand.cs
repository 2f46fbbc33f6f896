using System.CommandLine;
using System.Reflection;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using Rickyard.Screens;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary><c>rickyard demo</c>: the main job on an invented lot that comes with the program, so that a newcomer sees an answer at once.</summary>
internal sealed class DemoCommand(Screen screen, IDryingEngine engine, IRunPicture picture)
{
    private const string Resource = "demo-case.json", PictureName = "rickyard-demo.png";

    /// <summary>The command.</summary>
    public static Command Build(Screen screen, IDryingEngine engine, IRunPicture picture)
    {
        var file = new Option<string>("--picture") { Description = "Where to draw the split cut open and its curves.", HelpName = "file.svg|png", DefaultValueFactory = _ => PictureName };
        var command = new TaskCommand("demo", "An invented lot of red oak in a real climate: when it is ready, in words and a picture.", ["rickyard demo", "rickyard demo --picture demo.svg"]) { file };
        var demo = new DemoCommand(screen, engine, picture);
        command.SetAction((parsed, cancellation) => Task.Run(() => demo.Run(parsed.GetValue(file)!, cancellation), cancellation));
        return command;
    }

    private int Run(string path, CancellationToken cancellation)
    {
        if (OutputFiles.Check(path, "--picture") is { } unwritable) return Refuse(unwritable, ExitCode.BadInput);
        var drying = CaseReader.Read(InventedCase(), Resource).Value ?? throw new InvalidOperationException("The demo case is part of the program and reads.");
        var run = engine.Run(drying, new DryingRequest(), ".", new ScreenProgress(screen), cancellation).Value
            ?? throw new InvalidOperationException("The demo case names a place whose climate is part of the program.");
        screen.Progress(1);
        screen.Output.WriteLine("An invented lot, in the climate of a real place. Nothing here was measured.");
        screen.Output.WriteLine();
        RunStory.Tell(run, screen);
        var svg = path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
        if (OutputFiles.Write(path, "--picture", svg ? picture.Svg(run) : picture.Png(run)) is { } problem) return Refuse(problem, ExitCode.Failed);
        screen.Say($"The picture is in {path}. Your own case: docs/case-file.md, then: rickyard dry CASE");
        return ExitCode.Done;
    }

    private int Refuse(Core.Quantities.Problem problem, int exitCode)
    {
        screen.Problems("rickyard demo", [problem]);
        return exitCode;
    }

    private static string InventedCase()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
