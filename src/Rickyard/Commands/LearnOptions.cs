using System.CommandLine;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard learn</c> takes.</summary>
internal sealed class LearnOptions
{
    public Argument<string> Case { get; } = new("case") { Description = "Case file (JSON; docs/case-file.md says what is in it)." };

    public Argument<string?> Readings { get; } = new("readings")
    {
        Description = "Table of readings (CSV; docs/learning.md says what is in it); may be left out where the case has readings of its own.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines instead of the story." };

    public Option<string> Csv { get; } = new("--csv") { Description = "Also write every report as a table.", HelpName = "file" };

    public Option<string> Picture { get; } = new("--picture") { Description = "Also draw the curves with the readings among them.", HelpName = "file.svg|png" };

    public Option<int> Members { get; } = new("--members") { Description = "Runs of the engine behind the answer, a multiple of four.", HelpName = "number", DefaultValueFactory = _ => 128 };

    public Option<int> Seed { get; } = new("--seed") { Description = "Seed of every random draw.", HelpName = "number", DefaultValueFactory = _ => 1 };

    public Option<string> Band { get; } = new("--band") { Description = "The core moisture wanted, dry basis; with --scale, as that meter shows it.", HelpName = "band", DefaultValueFactory = _ => "18-20 %" };

    public Option<string> Scale { get; } = new("--scale") { Description = "Scale or species setting of the meter on which --band is meant; left out: moisture of the wood itself.", HelpName = "scale" };

    public Option<string> Today { get; } = new("--today") { Description = "Day the forecast starts from; left out: that of the last reading.", HelpName = "year-month-day" };
}
