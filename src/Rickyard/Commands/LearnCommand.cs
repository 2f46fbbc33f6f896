using System.CommandLine;
using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Quantities;
using Rickyard.Learn;
using Rickyard.Screens;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary><c>rickyard learn</c>: learns from the readings of a lot and tells when it is ready, in words, JSON, a table or a picture.</summary>
internal sealed class LearnCommand
{
    private readonly Screen _screen;
    private readonly ILearningEngine _engine;
    private readonly IObservationSource _source;
    private readonly IMeterBand _meter;
    private readonly ILearningPicture _picture;
    private readonly LearnOptions _options = new();

    private LearnCommand(Screen screen, ILearningEngine engine, IObservationSource source, IMeterBand meter, ILearningPicture picture) =>
        (_screen, _engine, _source, _meter, _picture) = (screen, engine, source, meter, picture);

    public static Command Build(Screen screen, ILearningEngine engine, IObservationSource source, IMeterBand meter, ILearningPicture picture)
    {
        var learn = new LearnCommand(screen, engine, source, meter, picture);
        var options = learn._options;
        var command = new TaskCommand("learn", "What the readings of a lot say: what is inside, when it is ready, and what to read next.",
        [
            "rickyard learn oak.json oak-readings.csv",
            "rickyard learn oak.json oak-readings.csv --band \"18-20 %\" --scale Douglas-fir --picture oak.svg",
            "rickyard learn oak.json --today 2026-09-01 --json",
        ])
        {
            options.Case, options.Readings, options.Json, options.Csv, options.Picture, options.Members, options.Seed, options.Band, options.Scale, options.Today,
        };
        command.SetAction((parsed, cancellation) => Task.Run(() => learn.Run(parsed, cancellation), CancellationToken.None));
        return command;
    }

    private int Run(ParseResult parsed, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_options.Case);
        var reading = new OptionReading(parsed);
        var question = new LearnQuestion(parsed, _options, _meter, reading);
        var (members, seed) = question.Asked();
        var drying = CaseFile.Read(path, reading);
        var (band, today) = (question.Band(drying), question.Today(drying));
        var found = drying is null ? null : Observations(drying, parsed.GetValue(_options.Readings), reading);
        if (drying is null || band is null || found is null || reading.Problems.Count > 0) return Refuse(path, reading.Problems);
        TellLeftOut(found.LeftOut);
        return Learn(parsed, drying, found, new(members, Seed: seed, BandLow: band.Low, BandHigh: band.High, Today: today), band, cancellation);
    }

    // Rows with faults are no reason to refuse as long as one without is there; where none is, each fault is a problem of its own.
    private FoundObservations? Observations(DryingCase drying, string? path, OptionReading reading)
    {
        var read = _source.Read(drying, path);
        foreach (var problem in read.Problems) reading.Wrong(problem);
        if (!read.TryGet(out var found)) return null;
        if (found.Kept.Count > 0) return found;
        if (found.LeftOut.Count == 0) reading.Wrong(path ?? "readings", "There is no reading to learn from.", "Give a table with columns date, piece, kind, place, value, unit, scale, temperature, note; or \"readings\" in the case (docs/learning.md).");
        foreach (var row in found.LeftOut) reading.Wrong($"{row.Place}, line {row.Line}", row.Why, row.WhatToDo);
        return null;
    }

    private void TellLeftOut(IReadOnlyList<LeftOutRow> rows)
    {
        foreach (var row in rows) _screen.Say($"Left out: {row.Place}, line {row.Line}: {row.Why}");
    }

    private int Learn(ParseResult parsed, DryingCase drying, FoundObservations found, LearningRequest request, CookBand band, CancellationToken cancellation)
    {
        var path = parsed.GetRequiredValue(_options.Case);
        var progress = new LearnProgress(_screen);
        try
        {
            var learnt = _engine.Run(drying, found.Kept, request, CaseFile.FolderOf(path), progress, cancellation);
            _screen.Progress(1);
            return learnt.TryGet(out var run) ? Answer(parsed, new(run with { Notes = [.. run.Notes, .. found.Notes] }, band, found.LeftOut)) : Refuse(path, learnt.Problems);
        }
        catch (OperationCanceledException)
        {
            _screen.Say($"Stopped {progress.Reached}. No file was changed.");
            return ExitCode.Failed;
        }
    }

    private int Refuse(string about, IReadOnlyList<Problem> problems)
    {
        _screen.Problems(about, problems);
        return ExitCode.BadInput;
    }

    // The answer is printed even where a file cannot be kept; the exit code then says so.
    private int Answer(ParseResult parsed, LearnAnswer answer)
    {
        var problem = KeepTable(parsed.GetValue(_options.Csv), answer.Run)
            ?? PictureFile.Keep(parsed.GetValue(_options.Picture), () => _picture.Svg(answer.Run), () => _picture.Png(answer.Run));
        if (parsed.GetValue(_options.Json)) _screen.Output.WriteLine(LearnJson.Write(answer));
        else LearnStory.Tell(answer, _screen);
        if (problem is null) return ExitCode.Done;
        _screen.Problems("rickyard learn", [problem]);
        return ExitCode.Failed;
    }

    private static Problem? KeepTable(string? path, LearningRun run) => path is null ? null : OutputFiles.Write(path, "--csv", LearnCsv.Write(run));
}
