using System.CommandLine;
using Rickyard.Core.Wood;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Commands;

/// <summary><c>rickyard species</c>: the woods known here, and all that is known of one, each value with its mark and source.</summary>
internal sealed class SpeciesCommand
{
    private readonly Screen _screen;
    private readonly Argument<string[]> _name = new("name") { Description = "Name of a wood, in any usual spelling; left out: all of them.", Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<bool> _json = new("--json") { Description = "JSON for machines." };

    private SpeciesCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var species = new SpeciesCommand(screen);
        var command = new TaskCommand("species", "The woods known here, every value with its mark and source.",
        [
            "rickyard species",
            "rickyard species \"northern red oak\"",
            "rickyard species shagbark hickory --json",
        ]) { species._name, species._json };
        command.SetAction(species.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var name = string.Join(' ', parsed.GetValue(_name) ?? []);
        var json = parsed.GetValue(_json);
        if (name.Length == 0)
        {
            if (json) _screen.Output.WriteLine(SpeciesJson.All());
            else List();
            return ExitCode.Done;
        }

        var found = SpeciesCatalogue.Find(name, "name");
        if (!found.TryGet(out var species))
        {
            _screen.Problems("rickyard species", found.Problems);
            return ExitCode.BadInput;
        }

        if (json) _screen.Output.WriteLine(SpeciesJson.One(species));
        else Show(species);
        return ExitCode.Done;
    }

    private void List()
    {
        _screen.Paragraph(Invariant($"{SpeciesCatalogue.All.Count} woods; those marked * have no values of their own and borrow from others with a wider spread. Density is oven-dry mass over green volume."));
        _screen.Table(
            "llrr",
            ["wood", "Latin name", "density kg/m³", "green % dry basis"],
            SpeciesCatalogue.All.Select(species => (IReadOnlyList<string>)
            [
                species.CommonName + (species.IsStandIn ? " *" : ""),
                species.LatinName,
                Invariant($"{species.BasicDensity.Value.KilogramsPerCubicMetre:0}"),
                Invariant($"{100 * species.GreenMoisture.Mean:0} ± {100 * species.GreenMoisture.Spread:0}"),
            ]));
    }

    private void Show(Species species)
    {
        _screen.Paragraph(species.LatinName.Length > 0 ? $"{species.CommonName} ({species.LatinName})" : species.CommonName);
        if (species.Aliases.Count > 0) _screen.Paragraph($"Also: {string.Join(", ", species.Aliases)}.");
        if (species.IsStandIn) _screen.Paragraph($"It has no values of its own; these stand in: {string.Join(", ", species.StandsIn)}.");
        var lines = SpeciesSheet.Of(species).ToList();
        var sources = lines.Select(line => line.Source).Where(source => source.Length > 0).Distinct().ToList();
        _screen.Table(
            "lrllr",
            ["property", "value", "unit", "mark", "source"],
            lines.Select(line => (IReadOnlyList<string>)[line.Name, line.Figure, line.Unit, line.Mark, line.Source.Length > 0 ? Invariant($"[{sources.IndexOf(line.Source) + 1}]") : ""]));
        foreach (var source in sources) _screen.Paragraph(Invariant($"[{sources.IndexOf(source) + 1}] {source}"));
        if (species.Notes.Length > 0) _screen.Paragraph($"Notes: {species.Notes}");
    }
}
