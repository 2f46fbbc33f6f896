using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>
/// Takes in what a person wrote down of a lot. What cannot be is kept out with its reasons, and nothing else is lost: a reading that is kept out changes nothing for the others.
/// docs/readings.md has the rules.
/// </summary>
public sealed class ObservationIntake
{
    private readonly DryingCase _drying;
    private readonly RowReader _rows;

    /// <summary>Ready to take readings of a case.</summary>
    /// <param name="drying">The case, which decides days, wood and classes.</param>
    /// <param name="today">The day on which it is read, or null where nobody knows; later readings are kept out.</param>
    /// <param name="correct">From a pin reading to moisture in a wood; null for <see cref="PinCorrection"/>.</param>
    public ObservationIntake(DryingCase drying, LocalDate? today = null, Func<PinReading, Species, PinPlace?, CorrectedReading>? correct = null)
    {
        _drying = drying;
        _rows = new(IntakeLot.Of(drying, today), correct ?? PinCorrection.Of);
    }

    /// <summary>The readings of a table, or what keeps all of it from being read.</summary>
    /// <param name="fileName">Its name, for messages.</param>
    /// <param name="text">All of it.</param>
    public Result<ObservationLog> Read(string fileName, string text)
    {
        var read = ReadingTable.Read(fileName, text);
        if (!read.TryGet(out var table)) return ResultOf.Failure<ObservationLog>(read.Problems);
        if (!_drying.Start.IsDated) return ResultOf.Failure<ObservationLog>([Undated]);
        var log = Take(table.Rows);
        return ResultOf.Success(log with { LeftOut = [.. table.Broken.Concat(log.LeftOut).OrderBy(row => row.Line)], Notes = [.. table.Notes, .. log.Notes] });
    }

    /// <summary>What a case without a day is told where its readings have one.</summary>
    internal static Problem Undated { get; } = new("start.at", "It is missing, and readings are told by their dates.", "Give the day on which the case starts, such as \"2024-05-14\".");

    /// <summary>Takes readings that are already parted into columns.</summary>
    internal ObservationLog Take(IReadOnlyList<GivenReading> given)
    {
        List<LeftOutReading> leftOut = [];
        var kept = ByThemselves(given, leftOut);
        foreach (var find in new Func<IReadOnlyList<TakenReading>, IEnumerable<CrossFault>>[] { MixedBases.Find, TwiceGiven.Find, DryMassHistory.Find, MassHistory.Find })
        {
            var faults = find(kept).ToList();
            leftOut.AddRange(faults.Select(fault => fault.LeftOut()));
            var gone = faults.Select(fault => fault.Reading).ToHashSet(ReferenceEqualityComparer.Instance);
            kept.RemoveAll(gone.Contains);
        }

        return new([.. kept.Select(reading => reading.Observation)], [.. leftOut.OrderBy(row => row.Line)], [.. TwiceGiven.Unlike(kept)]);
    }

    private List<TakenReading> ByThemselves(IReadOnlyList<GivenReading> given, List<LeftOutReading> leftOut)
    {
        List<TakenReading> kept = [];
        foreach (var row in given)
        {
            var faults = new RowFaults(row);
            if (_rows.Read(row, faults) is { } reading) kept.Add(reading);
            else leftOut.Add(faults.LeftOut());
        }

        return kept;
    }
}
