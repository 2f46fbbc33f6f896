using System.CommandLine;
using Rickyard.Core.Cases;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Meter;
using Rickyard.Screens;

namespace Rickyard.Commands;

/// <summary><c>rickyard meter</c>: what a pin meter's number means in this wood at this temperature.</summary>
internal sealed class MeterCommand
{
    private static readonly (string Name, PinPlace Place)[] Places =
    [
        ("end", PinPlace.EndGrain), ("end grain", PinPlace.EndGrain), ("side", PinPlace.Side), ("face", PinPlace.SplitFace), ("split face", PinPlace.SplitFace),
        ("core", PinPlace.FreshCore), ("fresh core", PinPlace.FreshCore),
    ];

    private readonly Screen _screen;
    private readonly MeterOptions _options = new();

    private MeterCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var meter = new MeterCommand(screen);
        var options = meter._options;
        var command = new TaskCommand("meter", "What a pin meter's number means in this wood at this temperature.",
        [
            "rickyard meter --species hickory --reading 20 --temperature \"27 °C\"",
            "rickyard meter --species \"post oak\" --reading over --place core",
            "rickyard meter --band \"18-20 %\" --scale Douglas-fir",
        ]) { options.Species, options.Reading, options.Temperature, options.Scale, options.Place, options.Band, options.Json };
        command.SetAction(meter.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var reading = new OptionReading(parsed);
        var scale = Kept(MeterScale.Find(parsed.GetValue(_options.Scale) ?? "", _options.Scale.Name), reading);
        var celsius = reading.Quantity(_options.Temperature, MeterOptions.Wood);
        var species = reading.Has(_options.Species) ? Kept(SpeciesCatalogue.Find(parsed.GetValue(_options.Species) ?? "", _options.Species.Name), reading) : null;
        if (reading.Has(_options.Band)) return Band(parsed, reading, scale, celsius, species);
        if (!reading.Has(_options.Species)) reading.Wrong(_options.Species.Name, "The wood is missing.", "Give it, such as --species hickory; a meter's number means another moisture in every wood.");
        var shown = Kept(ShownText.Read(parsed.GetValue(_options.Reading) ?? "", _options.Reading.Name), reading);
        var place = Place(parsed, reading);
        if (reading.Problems.Count > 0 || species is null || scale is null || shown is null) return Refuse(reading);
        var question = new MeterQuestion(species, new(shown.Shown, shown.Range, scale, celsius), place);
        var corrected = PinCorrection.Of(question.Reading, species, place);
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(MeterJson.Write(question, corrected));
        else MeterStory.Tell(question, corrected, _screen);
        return ExitCode.Done;
    }

    private int Band(ParseResult parsed, OptionReading reading, MeterScale? scale, double? celsius, Species? species)
    {
        var band = BandText.Read(parsed.GetValue(_options.Band) ?? "", reading);
        if (reading.Has(_options.Reading)) reading.Wrong(_options.Band.Name, "Both a reading and a band are given.", "Give one of --reading and --band.");
        if (reading.Problems.Count > 0 || band is null || scale is null) return Refuse(reading);
        var woods = species is null ? SpeciesCatalogue.All : [species];
        var warmth = celsius ?? TemperatureCorrection.TableCelsius;
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(BandTable.Json(band.Value.Low, band.Value.High, scale, warmth, woods));
        else BandTable.Tell(band.Value.Low, band.Value.High, scale, warmth, woods, _screen);
        return ExitCode.Done;
    }

    private int Refuse(OptionReading reading)
    {
        _screen.Problems("rickyard meter", reading.Problems);
        return ExitCode.BadInput;
    }

    private PinPlace? Place(ParseResult parsed, OptionReading reading)
    {
        if (!reading.Has(_options.Place)) return null;
        var text = (parsed.GetValue(_options.Place) ?? "").Trim();
        foreach (var (name, place) in Places)
            if (name.Equals(text, StringComparison.OrdinalIgnoreCase)) return place;
        var near = NearName.Find(text, Places.Select(place => place.Name));
        reading.Wrong(_options.Place.Name, $"{Echo.Of(text)} is no place that is known.{(near is null ? "" : $" Did you mean {near}?")}", "Give end, side, face or core.");
        return null;
    }

    private static T? Kept<T>(Result<T> result, OptionReading reading)
        where T : class
    {
        foreach (var problem in result.Problems) reading.Wrong(problem);
        return result.TryGet(out var value) ? value : null;
    }
}
