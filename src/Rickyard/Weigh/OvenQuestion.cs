using System.CommandLine;
using Rickyard.Commands;
using Rickyard.Core.Measuring.Ovens;
using Rickyard.Core.Quantities;

namespace Rickyard.Weigh;

/// <summary>A sample that is dried in an oven or a microwave.</summary>
/// <param name="parsed">The command line.</param>
/// <param name="reading">Keeps the problems.</param>
/// <param name="options">What may be typed.</param>
/// <param name="appliance">What it is dried in.</param>
internal sealed class OvenQuestion(ParseResult parsed, OptionReading reading, WeighOptions options, Appliance appliance)
{
    private const double HoursInDay = 24;

    private Option<string> Sample => appliance == Appliance.Oven ? options.Oven : options.Microwave;

    /// <summary>The answer, or null with at least one problem kept.</summary>
    public WeighAnswer? Answer()
    {
        var texts = (parsed.GetValue(Sample) ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var weighings = texts.Select(Weighing).ToList();
        var step = reading.Quantity(options.Balance, WeighOptions.Step);
        var method = Method();
        if (weighings.Contains(null) || method is null || reading.Problems.Count > 0) return null;
        var unit = MassUnit.Of(texts.Select(text => text.Split(':')[1]));
        var sheet = OvenWorksheet.Make(method, [.. weighings.Select(weighing => weighing!)], Mass.FromKilograms(step ?? unit.Step), Sample.Name);
        foreach (var problem in sheet.Problems) reading.Wrong(problem);
        return sheet.TryGet(out var made) ? new OvenSentences(made, unit).Answer() : null;
    }

    private OvenMethod? Method()
    {
        if (!reading.Has(options.Method)) return OvenMethods.Usual(appliance);
        var found = OvenMethods.Find(parsed.GetValue(options.Method) ?? "", appliance, options.Method.Name);
        foreach (var problem in found.Problems) reading.Wrong(problem);
        return found.Value;
    }

    private OvenWeighing? Weighing(string text)
    {
        if (text.Split(':') is not [var time, var mass])
        {
            reading.Wrong(Sample.Name, $"{Echo.Of(text)} is not a weighing.", "Give the time since it went in, a colon and the mass, with a semicolon between weighings, such as \"0 h: 136 g; 12 h: 101.2 g\".");
            return null;
        }

        var known = WeighOptions.Elapsed.TryRead(time, Sample.Name, out var days, out var wrongTime);
        var weighed = WeighOptions.Weight.TryRead(mass, Sample.Name, out var kilograms, out var wrongMass);
        if (wrongTime is not null) reading.Wrong(wrongTime);
        if (wrongMass is not null) reading.Wrong(wrongMass);
        return known && weighed ? new(HoursInDay * days, Mass.FromKilograms(kilograms)) : null;
    }
}
