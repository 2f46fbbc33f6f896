using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Rickyard.Commands;

/// <summary>The usual help, then examples and exit codes.</summary>
/// <param name="usual">What prints the usual help.</param>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var code = usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (var example in Examples(parseResult.CommandResult.Command)) output.WriteLine($"  {example}");
        output.WriteLine();
        output.WriteLine("Exit codes:");
        output.WriteLine($"  {ExitCode.Meaning}");
        return code;
    }

    private static IEnumerable<string> Examples(Command command) => command is TaskCommand task
        ? task.Examples
        : command.Subcommands.OfType<TaskCommand>().Select(known => known.Examples[0]);
}
