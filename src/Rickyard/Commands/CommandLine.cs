using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Rickyard.Screens;

namespace Rickyard.Commands;

/// <summary>Parses what was typed, runs the command, and answers for whatever goes wrong.</summary>
internal static class CommandLine
{
    private const string Description = "Tells what the moisture inside each lot of split firewood is, and when it will be ready.";

    /// <summary>How long work that is stopped may take to give its best so far.</summary>
    private static readonly TimeSpan LastWords = TimeSpan.FromMinutes(2);

    /// <summary>Runs the program.</summary>
    /// <param name="arguments">What was typed behind the program's name.</param>
    /// <param name="screen">Where it speaks.</param>
    /// <param name="commands">What it can do.</param>
    /// <returns>Exit code.</returns>
    public static int Run(IReadOnlyList<string> arguments, Screen screen, IReadOnlyList<Command> commands)
    {
        try
        {
            var parsed = Root(screen, commands).Parse(arguments.Count > 0 ? arguments : ["--help"]);
            if (parsed.Action is not ParseErrorAction) return parsed.Invoke(Configuration(screen));
            screen.Problems("rickyard", CommandLineProblems.Of(parsed));
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            screen.Say("Stopped. No file was changed.");
            return ExitCode.Failed;
        }
        catch (Exception failure)
        {
            screen.Say($"rickyard failed: {failure.Message}");
            screen.Say($"Files that were there before are as they were. If it happens again, keep the input and report this: {failure.GetType().Name} {failure.StackTrace?.Split('\n')[0].Trim()}");
            return ExitCode.Failed;
        }
    }

    private static InvocationConfiguration Configuration(Screen screen) =>
        new() { Output = screen.Output, Error = screen.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = LastWords };

    private static RootCommand Root(Screen screen, IReadOnlyList<Command> commands)
    {
        var root = new RootCommand(Description) { HelpName = "rickyard" };
        foreach (var command in commands) root.Add(command);
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples(new HelpAction { MaxWidth = screen.Width });
        return root;
    }
}
