using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Testing.Learning;

/// <summary>
/// Lots made up from the prior and dried by the engine itself (not by its stand-in), in weather of their own, looked at with errors as the inference believes them; so that what is
/// learnt can be held against what is true.
/// </summary>
public sealed class SyntheticLots
{
    private readonly IReadOnlyList<PlannedLook> _plan;
    private readonly LearningRequest _request;
    private readonly Lesson _template;
    private readonly EngineDesign _design;
    private readonly GroupRun _run;
    private readonly TypicalSplit _typical;
    private readonly StandIn _standIn;
    private readonly string[] _pieces;

    /// <summary>Ready to make lots.</summary>
    /// <param name="plan">When they are looked at.</param>
    /// <param name="members">Members of the stand-in.</param>
    /// <param name="seed">Seed.</param>
    public SyntheticLots(IReadOnlyList<PlannedLook> plan, int members, int seed)
    {
        _plan = plan;
        _request = new(members, Draws: 400, Seed: seed, Today: StudyPlan.LastLook);
        _template = Lesson([.. plan.Select((look, row) => InventedLook.Of(look, row, 0.2))]);
        var air = new CaseAir(_template.Case, StudyPlan.Weather);
        _design = _template.Design(air);
        _run = new(_template.Case, air, _template.Outputs.Days(), default);
        _typical = TypicalSplit.Run(_template.Case, air, _template.Series.Days, default);
        _standIn = _template.StandIn(_design.Run(members, null, default));
        _pieces = [.. plan.Select((look, row) => Key(look, row)).Distinct()];
    }

    /// <summary>Names of what is unknown of a lot.</summary>
    public IReadOnlyList<string> Unknowns => [.. _template.Unknowns.Active.Select(unknown => unknown.ToString())];

    /// <summary>A lot from the prior, or moved by so many standard deviations in some unknowns.</summary>
    /// <param name="number">Its number; decides all of it.</param>
    /// <param name="moved">Values that unknowns take instead, by name.</param>
    public SyntheticLot Make(int number, IReadOnlyDictionary<string, double>? moved = null)
    {
        var random = new Xoshiro256StarStar(unchecked(_request.Seed * 90001 + number));
        double Number() => Normal.Sample(random, 0, 1);
        double[] lot = [.. Unknowns.Select(name => moved is not null && moved.TryGetValue(name, out var value) ? value : Number())];
        var (factor, meter) = (Math.Exp(LotState.PieceSpreadLog * Number()), Number());
        // The middle split, two that nobody looks at, then those looked at.
        double[][] pieces = [Join(lot, 0, Number), .. Enumerable.Range(0, 2 + _pieces.Length).Select(_ => Join(lot, factor, Number))];
        var answers = Dry(pieces, unchecked(1_000_000 + number));
        double[] off = [.. pieces.Select(_ => Discrepancy.Spread * Number())], sizes = [.. pieces.Select(_ => 0.08 * Number())];
        var looks = _plan.Select((look, row) => Look(look, row, answers, off, sizes, meter, Number)).ToArray();
        return new(lot, meter, Core(answers, 0, 1), Core(answers, 1, 1 + off[1]), _template.Series.Days, looks);
    }

    /// <summary>Draws of what a lot may be after some of its looks.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="looks">How many of its looks are known.</param>
    /// <param name="seed">Seed of the chains.</param>
    public LearntLot Learn(SyntheticLot lot, int looks, int seed)
    {
        var lesson = Lesson([.. lot.Looks.Take(looks)]);
        // Outputs are numbered as they are first asked for, so the first looks of a plan have the numbers they have in the whole plan.
        var observed = lesson.Observed(_standIn);
        var chains = LotChains.Run(lesson.Unknowns, _standIn, observed, _request.Draws, seed, default);
        var lessons = new Lessons(lesson, _typical, _standIn, observed, chains);
        var outlook = lessons.Outlook(lessons.Draws, seed);
        return new(
            [.. lessons.Draws.Select(draw => draw.Unknowns)], [.. lessons.Draws.Select(draw => draw.Meters.Length > 0 ? draw.Meters[0] : 0)],
            [.. outlook.Middles.Select(track => track.Core)], [.. outlook.Pieces.Select(track => track.Core)]);
    }

    private Lesson Lesson(IReadOnlyList<Observation> looks) => new(LearningCase.Of(StudyPlan.Case, looks), looks, _request);

    private static string Key(PlannedLook look, int row) => look.Piece.Length > 0 ? look.Piece : $" {row}";

    private double[] Join(double[] lot, double factor, Func<double> number)
    {
        var unknowns = _template.Unknowns;
        double[] numbers = [.. lot.Select((one, k) => unknowns.LotShare[k] * one)];
        if (factor > 0)
            foreach (var k in unknowns.PieceOwn) numbers[k] += unknowns.PieceShare[k] * factor * number();
        return numbers;
    }

    /// <summary>Outputs by output and piece, four pieces at a time as the engine has it.</summary>
    private double[][] Dry(double[][] pieces, int weather)
    {
        var answers = _template.Outputs.All.Select(_ => new double[pieces.Length]).ToArray();
        for (var first = 0; first < pieces.Length; first += LaneGrid.FullLanes)
        {
            double[][] four = [.. Enumerable.Range(first, LaneGrid.FullLanes).Select(i => pieces[Math.Min(i, pieces.Length - 1)])];
            var some = _design.Answers(_run, four, weather);
            for (var output = 0; output < some.Length; output++)
            for (var i = first; i < Math.Min(first + LaneGrid.FullLanes, pieces.Length); i++) answers[output][i] = some[output][i - first];
        }

        return answers;
    }

    private double[] Core(double[][] answers, int piece, double factor) => [.. _template.Series.Core.Select(output => factor * answers[output][piece])];

    // The engine is off by the same factor for all looks at a piece: the inference lets it wander, slowly beside the months of a plan.
    private Observation Look(PlannedLook look, int row, double[][] answers, double[] off, double[] sizes, double meter, Func<double> number)
    {
        var piece = 3 + Array.IndexOf(_pieces, Key(look, row));
        double At(Sensor sensor) => answers[_template.Outputs.Ask(look.Day, sensor)][piece];
        if (look.Place is { } place)
        {
            var moisture = At(Sensor.OfPins(new(place))) * (1 + off[piece] + ObservedLotBuilder.LikeOf(place) * number());
            return InventedLook.Of(look, row, moisture + InventedLook.PinShared * meter + InventedLook.PinOwn * number());
        }

        if (look.IsOven) return InventedLook.Of(look, row, At(Sensor.Section) * (1 + off[piece] + ObservedLotBuilder.LikeOfOven * number()) + InventedLook.OvenError * number());
        var wet = At(Sensor.Mass) / At(Sensor.DryMass) - 1;
        var error = Math.Sqrt(InventedLook.ScaleError * InventedLook.ScaleError + ObservedLotBuilder.BesideWater * ObservedLotBuilder.BesideWater);
        return InventedLook.Of(look, row, At(Sensor.DryMass) * (1 + wet * (1 + off[piece])) * Math.Exp(sizes[piece] + error * number()));
    }
}
