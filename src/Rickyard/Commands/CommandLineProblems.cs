using System.CommandLine;
using System.CommandLine.Parsing;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What cannot be understood of a command line, as problems like all others.</summary>
internal static class CommandLineProblems
{
    public static IReadOnlyList<Problem> Of(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var help = command is RootCommand ? "rickyard --help" : $"rickyard {command.Name} --help";
        var unknown = parsed.UnmatchedTokens.Where((token, index) => !IsValue(parsed.UnmatchedTokens, index)).Select(token => new Problem(token, "This is no command, option or value that is known here.", Cure(command, token, help)));
        var others = parsed.Errors.Where(error => !parsed.UnmatchedTokens.Any(token => error.Message.Contains($"'{token}'", StringComparison.Ordinal)))
            .Where(error => parsed.UnmatchedTokens.Count == 0 || error.SymbolResult is not CommandResult)
            .Select(error => new Problem(FieldOf(error, command), error.Message, $"{help} shows what is allowed, with examples."));
        return [.. unknown, .. others];
    }

    // What stands behind an unknown option is its value, and no fault of its own.
    private static bool IsValue(IReadOnlyList<string> tokens, int index) =>
        index > 0 && tokens[index - 1].StartsWith("--", StringComparison.Ordinal) && !tokens[index].StartsWith('-');

    private static string Cure(Command command, string token, string help)
    {
        var names = command.Subcommands.Select(known => known.Name).Concat(command.Options.Select(option => option.Name));
        return NearName.Find(token, names) is { } near ? $"Did you mean {near}? {help} shows all." : $"{help} shows what is.";
    }

    private static string FieldOf(ParseError error, Command command) => error.SymbolResult switch
    {
        OptionResult option => option.Option.Name,
        ArgumentResult argument => argument.Argument.Name,
        _ => command.Name,
    };
}
