using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Reads one reading by itself, with no look at the others; everything wrong with it is told at once.</summary>
/// <param name="lot">What it must fit.</param>
/// <param name="correct">From a pin reading to moisture in a wood.</param>
internal sealed class RowReader(IntakeLot lot, Func<PinReading, Species, PinPlace?, CorrectedReading> correct)
{
    private const string WantedPiece = "Put a number on the split and give it here: a mass says something only beside the same split's others.";

    private readonly PinRow _pins = new(correct);

    public TakenReading? Read(GivenReading given, RowFaults faults)
    {
        var time = ReadingTime.Read(given, lot, faults);
        var piece = PieceName.Read(given, lot, faults);
        if (KindWords.Read(given, faults) is not { } kind) return null;
        var wood = piece?.Wood ?? lot.Woods[0];
        if (piece is { Name: "" } && (kind is ReadingKind.Weighing or ReadingKind.OvenDryMass)) faults.Wrong(ReadingColumns.Piece, "Which split was weighed is missing.", WantedPiece);
        var sighting = Sighting(kind, given, wood, faults);
        if (faults.Any || sighting is null) return null;
        var words = $"{sighting.Words}{(piece!.Name.Length > 0 ? $", piece {piece.Name}" : "")}, {time!.Words}";
        var observation = sighting.Make(new Origin(time.Day, piece.Name, wood.Class, given.Line, words));
        return new(given, observation, wood, kind, sighting.Basis);
    }

    private Sighting? Sighting(ReadingKind kind, GivenReading given, IntakeWood wood, RowFaults faults) => kind switch
    {
        ReadingKind.Pin => _pins.Read(given, wood, faults),
        ReadingKind.Weighing => MassRow.Weighing(given, wood, faults),
        ReadingKind.OvenDryMass => MassRow.OvenDry(given, wood, faults),
        ReadingKind.Oven => OvenRow.Oven(given, wood, faults),
        ReadingKind.Promise => OvenRow.Promise(given, wood, faults),
        _ => SignRow.Read(given, faults),
    };
}
