using System.CommandLine;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>Reads the quantities among the options of one command line and keeps every problem.</summary>
/// <param name="parsed">The command line.</param>
internal sealed class OptionReading(ParseResult parsed)
{
    private readonly List<Problem> _problems = [];

    /// <summary>Everything wrong so far.</summary>
    public IReadOnlyList<Problem> Problems => _problems;

    /// <summary>Keeps a problem.</summary>
    public void Wrong(Problem problem) => _problems.Add(problem);

    /// <summary>Keeps a problem.</summary>
    public void Wrong(string field, string whatIsWrong, string whatToDo) => Wrong(new(field, whatIsWrong, whatToDo));

    /// <summary>Whether an option was typed.</summary>
    public bool Has(Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>A quantity, or null when it was not typed or is wrong.</summary>
    public double? Quantity(Option<string> option, TypedQuantity allowed)
    {
        if (!Has(option)) return null;
        if (allowed.TryRead(parsed.GetValue(option) ?? "", option.Name, out var value, out var problem)) return value;
        Wrong(problem);
        return null;
    }

    /// <summary>A quantity that must be typed.</summary>
    public double? Needed(Option<string> option, TypedQuantity allowed)
    {
        if (!Has(option)) Wrong(option.Name, "It is missing.", allowed.Wanted);
        return Quantity(option, allowed);
    }
}
