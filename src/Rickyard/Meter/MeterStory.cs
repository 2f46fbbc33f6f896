using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Quantities;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Meter;

/// <summary>A corrected reading in words.</summary>
internal static class MeterStory
{
    /// <summary>Tell it: the answer, how the temperature corrections differ, notes.</summary>
    public static void Tell(MeterQuestion question, CorrectedReading corrected, Screen screen)
    {
        screen.Paragraph(Answer(question, corrected));
        if (corrected.Verdict == MeterVerdict.Measured && question.Reading.WoodCelsius is { } celsius) Methods(question, celsius, screen);
        foreach (var note in corrected.Notes) screen.Paragraph(note);
    }

    /// <summary>One sentence with its numbers.</summary>
    public static string Answer(MeterQuestion question, CorrectedReading corrected)
    {
        var wood = question.Species.CommonName;
        return corrected.Verdict switch
        {
            MeterVerdict.AtLeast => Invariant($"{Shown(question.Reading)} in {wood} means wet: at least {100 * corrected.Moisture:0.#} % dry basis at the pins; how much more a pin meter cannot tell."),
            MeterVerdict.AtMost => Invariant($"{Shown(question.Reading)} in {wood} means very dry: at most {100 * corrected.Moisture:0.#} % dry basis at the pins."),
            _ => Invariant($"{Shown(question.Reading)} in {wood} means {100 * corrected.Moisture:0.0} % dry basis at the pins (90 % sure: {100 * corrected.Low:0.0} to {100 * corrected.High:0.0} %); wet basis {MoistureContent.FromFraction(corrected.Moisture).PercentWet:0.0} %."),
        };
    }

    private static string Shown(PinReading reading)
    {
        var shown = reading.Range switch
        {
            ShownRange.Over => reading.Shown > 0 ? Invariant($"Over {100 * reading.Shown:0.#}") : "Over range",
            ShownRange.Under => reading.Shown > 0 ? Invariant($"Under {100 * reading.Shown:0.#}") : "Under range",
            _ => Invariant($"{100 * reading.Shown:0.#}"),
        };
        var warmth = reading.WoodCelsius is { } celsius ? Invariant($" at {celsius:0.#} °C") : "";
        return $"{shown} on the {reading.Scale.Name} scale{warmth}";
    }

    private static void Methods(MeterQuestion question, double celsius, Screen screen) => screen.Table(
        "lrrr",
        ["temperature correction", "nothing at", "adds", "then in this wood"],
        TemperatureMethods.All.Select(method => Row(question, method, celsius)));

    private static IReadOnlyList<string> Row(MeterQuestion question, TemperatureMethod method, double celsius)
    {
        var add = method.Add(100 * question.Reading.Shown, celsius);
        var moisture = SpeciesRows.Of(question.Species).Moisture(question.Reading.Scale.Megohm(question.Reading.Shown + add / 100));
        return [method.Name, Invariant($"{method.ZeroCelsius:0.#} °C"), Invariant($"{add:+0.0;-0.0;0.0}"), Invariant($"{100 * moisture:0.0} %")];
    }
}
