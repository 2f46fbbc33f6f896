using System.CommandLine;
using Rickyard.HotBox;
using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Screens;

namespace Rickyard.Commands;

/// <summary><c>rickyard warmth</c>: how much sooner a split is dry in warmer air, beside what vapour pressure alone would say.</summary>
internal sealed class WarmthCommand
{
    private const double LengthInches = 16, Degrees = 60;

    private readonly Screen _screen;
    private readonly WarmthOptions _options = new();

    private WarmthCommand(Screen screen) => _screen = screen;

    public static Command Build(Screen screen)
    {
        var warmth = new WarmthCommand(screen);
        var options = warmth._options;
        var command = new TaskCommand("warmth", "How much sooner a split is dry in warmer air, beside what vapour pressure alone would say.",
        [
            "rickyard warmth --species \"post oak\" --width \"7 cm\" --from \"20 °C\" --to \"70 °C\"",
            "rickyard warmth --from \"60 °F\" --to \"160 °F\" --humidity \"70 %\" --to-humidity \"30 %\" --json",
        ]) { options.Species, options.Width, options.From, options.To, options.Humidity, options.ToHumidity, options.Target, options.Speed, options.Json };
        command.SetAction((parsed, cancellation) => Task.Run(() => warmth.Run(parsed, cancellation), cancellation));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var reading = new OptionReading(parsed);
        var question = Read(parsed, reading);
        if (question is null || reading.Problems.Count > 0)
        {
            _screen.Problems("rickyard warmth", reading.Problems);
            return ExitCode.BadInput;
        }

        var gain = WarmthGain.Run(question, cancellation);
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(WarmthJson.Write(question, gain));
        else WarmthStory.Tell(question, gain, _screen);
        return ExitCode.Done;
    }

    private WarmthQuestion? Read(ParseResult parsed, OptionReading reading)
    {
        double Value(Option<string> option, TypedQuantity allowed)
        {
            if (allowed.TryRead(parsed.GetValue(option) ?? "", option.Name, out var value, out var problem)) return value;
            reading.Wrong(problem);
            return double.NaN;
        }

        var species = SpeciesCatalogue.Find(parsed.GetValue(_options.Species) ?? "", _options.Species.Name);
        foreach (var problem in species.Problems) reading.Wrong(problem);
        var width = Value(_options.Width, WarmthOptions.Size);
        var (from, to) = (Value(_options.From, WarmthOptions.Air), Value(_options.To, WarmthOptions.Air));
        var humidity = Value(_options.Humidity, AirQuantities.Humidity);
        var warm = reading.Quantity(_options.ToHumidity, AirQuantities.Humidity);
        var (target, speed) = (Value(_options.Target, WarmthOptions.Moisture), Value(_options.Speed, WarmthOptions.AirSpeed));
        if (to <= from) reading.Wrong(_options.To.Name, "It is not warmer than --from.", "Give the cooler air as --from and the warmer as --to.");
        if (!species.TryGet(out var wood) || reading.Problems.Count > 0) return null;
        AskTarget(target, wood, reading);
        if (warm is { } given) AskAir(to, given, reading);
        return new()
        {
            Split = Split.Wedge(Length.FromMetres(width), Angle.FromDegrees(Degrees), Length.FromInches(LengthInches)),
            Wood = new LaneWood(wood.BasicDensity.Value.KilogramsPerCubicMetre, Math.Exp(wood.RateFactor.MeanLog)),
            Anatomy = wood.Anatomy,
            StartMoisture = wood.GreenMoisture.Mean,
            Target = target,
            FromCelsius = from,
            ToCelsius = to,
            FromHumidity = humidity,
            ToHumidity = warm,
            Speed = speed,
        };
    }

    private void AskTarget(double target, Species wood, OptionReading reading)
    {
        var green = MoistureContent.FromFraction(wood.GreenMoisture.Mean);
        if (target >= green.Fraction) reading.Wrong(_options.Target.Name, $"Green {wood.CommonName} starts at {green}, so this is passed already.", $"Give less than {green}.");
    }

    private static void AskAir(double celsius, double humidity, OptionReading reading)
    {
        var air = MoistAir.FromRelativeHumidity(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), Pressure.StandardAtmosphere);
        foreach (var problem in air.Problems) reading.Wrong(problem with { Field = "--to-humidity" });
    }
}
