using System.CommandLine;
using System.Text;
using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.Screens;
using Rickyard.SplitSize;
using Rickyard.Store;
using Rickyard.Web.Pictures.Sizes;

namespace Rickyard.Commands;

/// <summary><c>rickyard split-size</c>: how wide to split, so that the cores are ready by a day; and the chart of all months.</summary>
internal sealed class SplitSizeCommand
{
    private const int MostMembers = 4096;

    private static readonly TypedQuantity AllowedConfidence = new(QuantityUnits.Share, 0.5, 0.99, "50 to 99 %", "90 %");

    private readonly Screen _screen;
    private readonly ISizeEngine _engine;
    private readonly SplitSizeOptions _options = new();

    private SplitSizeCommand(Screen screen, ISizeEngine engine) => (_screen, _engine) = (screen, engine);

    public static Command Build(Screen screen, ISizeEngine engine)
    {
        var size = new SplitSizeCommand(screen, engine);
        var options = size._options;
        var command = new TaskCommand("split-size", "How wide to split, so that the cores are ready by a day.",
        [
            "rickyard split-size oak.json --by 2027-05-01",
            "rickyard split-size oak.json --in \"5 months\" --confidence \"95 %\" --json",
            "rickyard split-size oak.json --chart oak-sizes.png",
        ]) { options.Case, options.By, options.In, options.Band, options.Confidence, options.Chart, options.Json, options.Members, options.Seed };
        command.SetAction((parsed, cancellation) => Task.Run(() => size.Run(parsed, cancellation), cancellation));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_options.Case);
        var reading = new OptionReading(parsed);
        var wanted = Wanted(parsed, reading);
        var chart = Chart(parsed, reading);
        var drying = Read(path, reading);
        var days = drying is null ? null : NeededBy.Read(parsed, _options.By, _options.In, drying, reading);
        if (chart is null && !reading.Has(_options.By) && !reading.Has(_options.In)) reading.Wrong("--by", "Nothing says when the wood is needed.", "Give --by 2027-05-01 or --in \"5 months\"; or --chart sizes.svg for all months.");
        if (drying is null || reading.Problems.Count > 0) return Refuse(path, reading.Problems);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var answer = days is { } needed ? _engine.Answer(drying, new(needed, wanted.BandHigh, wanted.Confidence, wanted.Members, wanted.Seed), folder, new ScreenProgress(_screen), cancellation) : null;
        if (answer is { Problems.Count: > 0 }) return Refuse(path, [.. answer.Problems.Select(problem => Named(problem, reading))]);
        var calendar = chart is null ? null : _engine.Calendar(drying, wanted, folder, new ScreenProgress(_screen), cancellation);
        if (calendar is { Problems.Count: > 0 }) return Refuse(path, [.. calendar.Problems.Select(problem => Named(problem, reading))]);
        _screen.Progress(1);
        return Tell(drying, answer?.Value, calendar?.Value, chart, parsed.GetValue(_options.Json));
    }

    private SizeCalendarRequest Wanted(ParseResult parsed, OptionReading reading)
    {
        var band = BandText.Read(parsed.GetValue(_options.Band) ?? "", reading);
        var confidence = reading.Has(_options.Confidence) ? reading.Quantity(_options.Confidence, AllowedConfidence) : null;
        var (members, seed) = (parsed.GetValue(_options.Members), parsed.GetValue(_options.Seed));
        if (members is < 4 or > MostMembers || members % 4 != 0) reading.Wrong("--members", $"{members} members cannot be run.", $"Give a multiple of four from 4 to {MostMembers}.");
        if (seed < 0) reading.Wrong("--seed", $"{seed} is negative.", "Give 0 or more.");
        return new(band?.High ?? 0, confidence ?? 0.9, members, seed);
    }

    private string? Chart(ParseResult parsed, OptionReading reading)
    {
        if (parsed.GetValue(_options.Chart) is not { } path) return null;
        if (OutputFiles.Check(path, "--chart") is { } problem) reading.Wrong(problem);
        if (!IsSvg(path) && !path.EndsWith(".png", StringComparison.OrdinalIgnoreCase)) reading.Wrong("--chart", $"{Echo.Of(path)} is neither SVG nor PNG by its name.", "End the name with .svg or .png.");
        return path;
    }

    private static DryingCase? Read(string path, OptionReading reading)
    {
        var text = InputFiles.ReadText(path);
        foreach (var problem in text.Problems) reading.Wrong(problem);
        if (!text.TryGet(out var json)) return null;
        var drying = CaseReader.Read(json, Path.GetFileName(path));
        foreach (var problem in drying.Problems) reading.Wrong(problem);
        return drying.Value;
    }

    // What the search calls by its own name is told by the option it came from.
    private Problem Named(Problem problem, OptionReading reading) => problem.Field switch
    {
        "needed by" => problem with { Field = reading.Has(_options.By) ? "--by" : "--in" },
        "confidence" => problem with { Field = "--confidence" },
        _ => problem,
    };

    // The answer is printed even where the chart cannot be kept; the exit code then says so.
    private int Tell(DryingCase drying, SizeAnswer? answer, SizeCalendar? calendar, string? chart, bool json)
    {
        var problem = calendar is null ? null : OutputFiles.Write(chart!, "--chart", IsSvg(chart!) ? Encoding.UTF8.GetBytes(SizeChart.Svg(calendar)) : SizeChart.Png(calendar));
        if (json) _screen.Output.WriteLine(SizeJson.Write(drying, answer, calendar));
        else Tell(answer, calendar);
        if (problem is not null) _screen.Problems("rickyard split-size", [problem]);
        return problem is null ? ExitCode.Done : ExitCode.Failed;
    }

    private void Tell(SizeAnswer? answer, SizeCalendar? calendar)
    {
        if (answer is not null) SizeStory.Tell(answer, _screen);
        if (answer is not null && calendar is not null) _screen.Gap();
        if (calendar is not null) SizeTable.Tell(calendar, _screen);
    }

    private int Refuse(string about, IReadOnlyList<Problem> problems)
    {
        _screen.Problems(about, problems);
        return ExitCode.BadInput;
    }

    private static bool IsSvg(string path) => path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
}
