using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// Sorts observations by piece and says which outputs of the engine each needs; once the stand-in is fitted, makes the terms with its errors in them.
/// </summary>
internal sealed class ObservedLotBuilder
{
    /// <summary>What a piece of a lot weighs beside what its width says: length and shape; judgement.</summary>
    private const double LotPieceSpread = 0.08;

    /// <summary>The same where the case describes the one piece itself.</summary>
    private const double OnePieceSpread = 0.02;

    /// <summary>What a split gains or loses beside water from inside: bark, splinters, a damp skin; judgement.</summary>
    internal const double BesideWater = 0.007;

    /// <summary>How alike sections of one piece are, beside their moisture; judgement.</summary>
    internal const double LikeOfOven = 0.03;

    private readonly IReadOnlyList<Observation> _observations;
    private readonly OutputTable _table;
    private readonly bool _isLot;
    private readonly double _pieceSpread;
    private readonly List<string> _meters = [];

    /// <summary>Of the observations of a case.</summary>
    /// <param name="observations">What was observed.</param>
    /// <param name="isLot">Whether the case is of several pieces; in a case of one, all is observed of it.</param>
    /// <param name="table">Outputs, added to.</param>
    internal ObservedLotBuilder(IReadOnlyList<Observation> observations, bool isLot, OutputTable table)
    {
        (_observations, _table, _isLot, _pieceSpread) = (observations, table, isLot, isLot ? LotPieceSpread : OnePieceSpread);
        Pieces = [.. observations.Select((observation, number) => (observation, number)).Where(pair => pair.observation is not PromiseObservation)
            .GroupBy(pair => !isLot ? "" : pair.observation.From.Piece.Length > 0 ? pair.observation.From.Piece : $" {pair.number}", pair => pair.number)
            .Select(group => group.OrderBy(number => observations[number].From.Day).ToArray())];
        Outputs = [.. observations.SelectMany(Needs).Distinct()];
    }

    /// <summary>Places in the list, by piece and in order of time.</summary>
    private IReadOnlyList<int[]> Pieces { get; }

    /// <summary>Outputs that observations need, as numbered in the table.</summary>
    internal IReadOnlyList<int> Outputs { get; }

    /// <summary>The lot, with the stand-in's errors.</summary>
    internal ObservedLot Build(StandIn standIn) => new(
        [.. Pieces.Select(piece => Piece(piece, standIn))],
        [.. _observations.Select((one, number) => one is PromiseObservation promise ? new Promise(Needs(one)[0], promise.Moisture, number, one.From.Day) : null).OfType<Promise>()],
        _meters,
        _pieceSpread);

    private ObservedPiece Piece(int[] numbers, StandIn standIn)
    {
        int[] outputs = [.. numbers.SelectMany(number => Needs(_observations[number])).Distinct()];
        Term[] terms = [.. numbers.Select(number => Term(number, outputs, standIn))];
        return new(_observations[numbers[0]].From.Piece, outputs, terms, _isLot && terms is [MoistureTerm or MassTerm]);
    }

    private int[] Needs(Observation observation)
    {
        int Ask(Sensor sensor) => _table.Ask(observation.From.Day, sensor);
        return observation switch
        {
            PinObservation pin => [Ask(Sensor.OfPins(pin.Pins))],
            OvenObservation oven => [Ask(oven.Part switch { OvenPart.Whole => Sensor.Mean, OvenPart.Section => Sensor.Section, _ => Sensor.Core })],
            MassObservation or DryMassObservation => [Ask(Sensor.Mass), Ask(Sensor.DryMass)],
            PromiseObservation => [Ask(Sensor.Mean)],
            _ => [Ask(Sensor.Core), Ask(Sensor.Mean), Ask(Sensor.Shell), Ask(Sensor.End)],
        };
    }

    private Term Term(int number, int[] outputs, StandIn standIn)
    {
        var observation = _observations[number];
        var (day, needs) = (observation.From.Day, Needs(observation));
        int At(int need) => Array.IndexOf(outputs, needs[need]);
        var error = standIn.Errors[needs[0]];
        return observation switch
        {
            PinObservation pin => Pin(number, day, At(0), pin, Apart(error, LikeOf(pin.Pins.Place))),
            OvenObservation oven => new MoistureTerm(number, day, At(0), oven.Moisture, MeterVerdict.Measured, oven.Spread, 0, -1, Apart(error, LikeOfOven)),
            MassObservation mass => Mass(number, day, At(0), At(1), mass.Kilograms, mass.Spread, error, isDry: false),
            DryMassObservation dry => Mass(number, day, At(0), At(1), dry.Kilograms, dry.Spread, standIn.Errors[needs[1]], isDry: true),
            SignObservation sign => new SignTerm(number, day, At(0), At(1), At(2), At(3), sign.Sign, sign.Seen),
            _ => throw new ArgumentOutOfRangeException(nameof(number), observation, "An observation of a kind that is not learnt from."),
        };
    }

    private MoistureTerm Pin(int number, double day, int output, PinObservation pin, double relative) => new(
        number, day, output, pin.Corrected.Moisture, pin.Corrected.Verdict, pin.Corrected.OwnSpread, pin.Corrected.SharedSpread, Meter(pin.Reading.Scale.Name), relative);

    private MassTerm Mass(int number, double day, int mass, int dry, double kilograms, double spread, double error, bool isDry) =>
        new(number, day, mass, dry, Math.Log(kilograms), Apart(Apart(error, BesideWater), spread / kilograms), _pieceSpread, isDry);

    private int Meter(string scale)
    {
        if (!_meters.Contains(scale)) _meters.Add(scale);
        return _meters.IndexOf(scale);
    }

    private static double Apart(double a, double b) => Math.Sqrt(a * a + b * b);

    /// <summary>How alike places of one kind on one piece are, beside their moisture; judgement: a face dries unevenly by sun, knots and neighbours, a core hardly.</summary>
    internal static double LikeOf(PinPlace place) => place switch { PinPlace.FreshCore => 0.04, PinPlace.SplitFace => 0.08, PinPlace.Side => 0.10, _ => 0.12 };
}
