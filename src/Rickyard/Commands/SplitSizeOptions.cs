using System.CommandLine;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard split-size</c> takes.</summary>
internal sealed class SplitSizeOptions
{
    public Argument<string> Case { get; } = new("case") { Description = "Case file (JSON; docs/case-file.md says what is in it)." };

    public Option<string> By { get; } = new("--by") { Description = "The day the wood is needed.", HelpName = "year-month-day" };

    public Option<string> In { get; } = new("--in") { Description = "Or how long after the start.", HelpName = "time" };

    public Option<string> Band { get; } = new("--band") { Description = "The core moisture wanted, dry basis; its upper edge counts.", HelpName = "band", DefaultValueFactory = _ => "18-20 %" };

    public Option<string> Confidence { get; } = new("--confidence") { Description = "How many of the cores must be there.", HelpName = "share", DefaultValueFactory = _ => "90 %" };

    public Option<string> Chart { get; } = new("--chart") { Description = "Also draw the chart of all months, for print.", HelpName = "file.svg|png" };

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines instead of the story." };

    public Option<int> Members { get; } = new("--members") { Description = "Runs of each size, a multiple of four.", HelpName = "number", DefaultValueFactory = _ => 32 };

    public Option<int> Seed { get; } = new("--seed") { Description = "Seed of every random draw.", HelpName = "number", DefaultValueFactory = _ => 1 };
}
