using System.CommandLine;

namespace Rickyard.Commands;

/// <summary>What <c>rickyard charge</c> takes.</summary>
internal sealed class ChargeOptions
{
    public Argument<string> Case { get; } = new("case") { Description = "Case file with a hot box and its charge (docs/hot-box.md)." };

    public Option<string> Goal { get; } = new("--goal") { Description = "usable: the core in the band on the day, the shell may be drier; even: core, shell and mean all near it.", HelpName = "usable|even", DefaultValueFactory = _ => "usable" };

    public Option<string> By { get; } = new("--by") { Description = "The day on which the wood is needed, year-month-day; left out: the length of the case's run.", HelpName = "date" };

    public Option<string> In { get; } = new("--in") { Description = "In place of --by: how long from loading.", HelpName = "time" };

    public Option<string> Band { get; } = new("--band") { Description = "The moisture wanted, dry basis.", HelpName = "band", DefaultValueFactory = _ => "18-20 %" };

    public Option<string> Highest { get; } = new("--highest") { Description = "Warmest setting to be tried; above 77 °C only with an override in the case.", HelpName = "temperature", DefaultValueFactory = _ => "70 °C" };

    public Option<int> Members { get; } = new("--members") { Description = "Runs behind the bands of the schedule chosen, a multiple of four.", HelpName = "number", DefaultValueFactory = _ => 64 };

    public Option<int> Seed { get; } = new("--seed") { Description = "Seed of every random draw.", HelpName = "number", DefaultValueFactory = _ => 1 };

    public Option<bool> Json { get; } = new("--json") { Description = "JSON for machines instead of the story." };

    public Option<string> Picture { get; } = new("--picture") { Description = "Also draw the trade-off and the pull list.", HelpName = "file.svg|png" };
}
