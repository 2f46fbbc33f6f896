using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Quantities;
using Rickyard.Store;

namespace Rickyard.Learn;

/// <summary>Reads the table of readings from its file and the readings of the case itself.</summary>
/// <param name="clock">Knows what day it is: a reading of tomorrow is a slip of the pen.</param>
internal sealed class ObservationSource(TimeProvider clock) : IObservationSource
{
    /// <inheritdoc/>
    public Result<FoundObservations> Read(DryingCase drying, string? path)
    {
        if (path is null) return ResultOf.Success(new FoundObservations(drying.Observations, [], []));
        var text = InputFiles.ReadText(path);
        if (!text.TryGet(out var table)) return ResultOf.Failure<FoundObservations>(text.Problems);
        var read = new ObservationIntake(drying, LocalDate.FromDateTime(clock.GetLocalNow().DateTime)).Read(Path.GetFileName(path), table);
        return read.TryGet(out var log)
            ? ResultOf.Success(new FoundObservations(
                [.. drying.Observations, .. log.Kept], [.. log.LeftOut.Select(row => new LeftOutRow(row.Place, row.Line, row.Why, row.WhatToDo))], log.Notes))
            : ResultOf.Failure<FoundObservations>(read.Problems);
    }
}
