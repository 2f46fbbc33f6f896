using System.CommandLine;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard dry</c> takes.</summary>
internal sealed class DryOptions
{
    public Argument<string> Case { get; } = new("case") { Description = "Case file (JSON; docs/case-file.md says what is in it)." };

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines instead of the story." };

    public Option<string> Csv { get; } = new("--csv") { Description = "Also write every report as a table.", HelpName = "file" };

    public Option<string> Picture { get; } = new("--picture") { Description = "Also draw the split cut open and its curves.", HelpName = "file.svg|png" };

    public Option<int> Members { get; } = new("--members") { Description = "Runs behind the bands, a multiple of four.", HelpName = "number", DefaultValueFactory = _ => 64 };

    public Option<int> Seed { get; } = new("--seed") { Description = "Seed of every random draw.", HelpName = "number", DefaultValueFactory = _ => 1 };

    public Option<string> Band { get; } = new("--band") { Description = "The core moisture wanted, dry basis.", HelpName = "band", DefaultValueFactory = _ => "18-20 %" };
}
