using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.Outlook;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;
using Rickyard.Core.Measuring.Sampling;

namespace Rickyard.Core.Learning;

/// <summary>What was learnt: draws of what the lot may be, and what they say.</summary>
internal sealed class Lessons
{
    /// <summary>A pin reading's own error between splits of one moisture, for the number to probe. [kg kg⁻¹]</summary>
    private const double ReadingError = 0.012;

    private readonly Lesson _lesson;
    private readonly TypicalSplit _typical;
    private readonly ObservedLot _observed;
    private readonly IReadOnlyList<LotDraw>[] _chains;
    private readonly bool _isLot;

    internal Lessons(Lesson lesson, TypicalSplit typical, StandIn standIn, ObservedLot observed, IReadOnlyList<LotDraw>[] chains)
    {
        (_lesson, _typical, StandIn, _observed, _chains) = (lesson, typical, standIn, observed, chains);
        _isLot = LearningCase.IsLot(lesson.Case);
        Draws = [.. chains.SelectMany(chain => chain)];
    }

    /// <summary>Draws of the lot, chain after chain.</summary>
    internal IReadOnlyList<LotDraw> Draws { get; }

    /// <summary>The engine's stand-in.</summary>
    internal StandIn StandIn { get; }

    private LearningRequest Request => _lesson.Request;

    /// <summary>The lot's curves from some draws.</summary>
    internal LotOutlook Outlook(IReadOnlyList<LotDraw> draws, int stream) => new(StandIn, _lesson.Series, _typical.Celsius, draws, Drawer(stream), Request);

    /// <summary>All of it.</summary>
    internal LearningRun Tell()
    {
        var (after, before) = (Outlook(Draws, 1), Outlook(BeforeAnything(), 2));
        var (low, median, high) = Bands.Of(after.Pieces);
        var ready = ReadyDays(after);
        var fits = ObservationFits.Of(_lesson.Observations, Draws, Drawer(3));
        var now = Array.IndexOf(_lesson.Series.Days, _lesson.Today);
        return new()
        {
            Case = _lesson.Case,
            Days = _lesson.Series.Days,
            Today = _lesson.Today,
            LowTenth = low,
            Median = median,
            HighTenth = high,
            LotCore = after.MiddleCore(),
            CoreBefore = before.Core(),
            ShareInBand = after.ShareInBand(Request.BandLow, Request.BandHigh),
            LotWindow = after.LotWindow,
            Window = after.Window,
            WindowBefore = before.Window,
            LotWindowBefore = before.LotWindow,
            Pieces = Marked(after),
            Unknowns = Learnt.Of(_lesson.Case, _lesson.Unknowns, _observed, _lesson.Observations, Draws),
            Observations = fits,
            Next = ReadingGains.Of(_lesson.Choices.All(StandIn, _lesson.Series, Draws, Drawer(4), _observed, _isLot), ready),
            Probe = Probe(after, now),
            OverDry = OverDryOutlook.Of(_lesson.Series.Days, after.Pieces, Request, _lesson.Today),
            Health = HealthReport.Of(_chains, ready, StandIn.Errors[_lesson.Series.Core[now]], after.MiddleCore()[now].Middle, fits),
            AirEquilibrium = _typical.AirEquilibrium,
            Notes = _typical.Notes,
            Request = Request,
            ModelVersion = ModelVersion.Current,
        };
    }

    private PieceDrawer Drawer(int stream) => new(_lesson.Unknowns, _observed.PieceSpread, _isLot, unchecked(Request.Seed * 7001 + stream));

    /// <summary>As many draws from the prior.</summary>
    private LotDraw[] BeforeAnything()
    {
        var random = new Xoshiro256StarStar(unchecked(Request.Seed * 5003 + 11));
        double Number() => Normal.Sample(random, 0, 1);
        return [.. Draws.Select(_ => new LotDraw(
            [.. _lesson.Unknowns.Active.Select(_ => Number())], Math.Exp(LotState.PieceSpreadLog * Number()), [], [.. Enumerable.Range(0, StandIn.Weather.Count).Select(_ => Number())], [], []))];
    }

    private IReadOnlyList<PieceForecast> Marked(LotOutlook outlook)
    {
        var drawer = Drawer(5);
        return [.. _observed.Pieces.Select((piece, i) => (piece.Name, i)).Where(pair => pair.Name.Length > 0)
            .Select(pair => outlook.Observed(pair.Name, [.. Draws.Select(draw => drawer.Observed(draw, pair.i))], Request))];
    }

    /// <summary>The day the middle split comes into the band, or, where it is in or past it today, leaves it; the end of the run where that comes later.</summary>
    private double[] ReadyDays(LotOutlook outlook)
    {
        var (days, end) = (_lesson.Series.Days, _lesson.Series.Days[^1]);
        double[] Crossing(double level) => [.. outlook.Middles.Select(track => Math.Min(end, Bands.FirstAtOrBelow(days, track.Core, level, 0)))];
        var from = Crossing(Request.BandHigh);
        return from.Count(day => day > _lesson.Today) * 2 >= from.Length ? from : Crossing(Request.BandLow);
    }

    private static ProbeCount Probe(LotOutlook outlook, int now)
    {
        var variance = outlook.Shares.Average(lot =>
        {
            var mean = lot.Average(core => core[now]);
            return lot.Sum(core => Math.Pow(core[now] - mean, 2)) / (lot.Length - 1);
        });
        var spread = Math.Sqrt(variance + ReadingError * ReadingError);
        return new(spread, PiecesNeeded.For(spread, ProbedPieces.WantedHalfWidth, ProbedPieces.WantedConfidence));
    }
}
