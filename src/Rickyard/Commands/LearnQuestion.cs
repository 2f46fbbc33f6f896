using System.CommandLine;
using NodaTime.Text;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Learn;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary>What is asked of the readings of a lot, read from the command line beside its case; whatever is wrong goes to the reading.</summary>
internal sealed class LearnQuestion(ParseResult parsed, LearnOptions options, IMeterBand meter, OptionReading reading)
{
    private const double RoundingDays = 1e-6;

    /// <summary>Members and seed, and the files to be written.</summary>
    public (int Members, int Seed) Asked()
    {
        var (members, seed) = (parsed.GetValue(options.Members), parsed.GetValue(options.Seed));
        EnsembleCheck.Ask(members, seed, reading);
        if (parsed.GetValue(options.Csv) is { } path && OutputFiles.Check(path, options.Csv.Name) is { } problem) reading.Wrong(problem);
        PictureFile.Ask(parsed.GetValue(options.Picture), reading);
        return (members, seed);
    }

    /// <summary>The band as moisture of this wood, or null where it cannot be read.</summary>
    /// <param name="drying">The case, or null where it could not be read: then only what stands alone is asked.</param>
    public CookBand? Band(DryingCase? drying)
    {
        if (drying?.Cook is { } cook && !reading.Has(options.Band) && !reading.Has(options.Scale)) return Kept(meter.Translate(cook.Low, cook.High, cook.Scale.Name, drying.Species));
        if (BandText.Read(parsed.GetValue(options.Band) ?? "", reading) is not { } band) return null;
        if (!reading.Has(options.Scale)) return new(band.Low, band.High, null, band.Low, band.High);
        if (drying is null) return null;
        return Kept(meter.Translate(band.Low, band.High, parsed.GetValue(options.Scale) ?? "", drying.Species));
    }

    private CookBand? Kept(Core.Quantities.Result<CookBand> translated)
    {
        foreach (var problem in translated.Problems) reading.Wrong(problem);
        return translated.Value;
    }

    /// <summary>Day of the run the forecast starts from, or null for that of the last reading. [d]</summary>
    public double? Today(DryingCase? drying)
    {
        if (!reading.Has(options.Today)) return null;
        var text = parsed.GetValue(options.Today) ?? "";
        var day = LocalDatePattern.Iso.Parse(text.Trim());
        if (!day.Success) reading.Wrong("--today", $"{Echo.Of(text)} is not a day.", "Give year-month-day, such as \"2026-03-14\".");
        if (!day.Success || drying is null) return null;
        if (!drying.Start.IsDated) reading.Wrong("--today", "The case does not say on which day it starts.", "Give \"at\" in its \"start\", or leave --today out.");
        var days = NodaTime.Period.DaysBetween(drying.StartDate, day.Value);
        if (drying.Start.IsDated && (days < 0 || days > drying.Days + RoundingDays)) reading.Wrong("--today", $"{Echo.Of(text)} is not within the run of the case, {Span(drying)}.", "Give a day in it, or let the case run longer (\"run\", \"for\").");
        return days;
    }

    private static string Span(DryingCase drying) =>
        $"{LocalDatePattern.Iso.Format(drying.StartDate)} to {LocalDatePattern.Iso.Format(drying.StartDate.PlusDays((int)Math.Floor(drying.Days)))}";
}
