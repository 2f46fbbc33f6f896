using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.StandIns;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>What draws of a lot say of its splits through time.</summary>
internal sealed class LotOutlook
{
    private const int SharesFrom = 125;
    private const int PiecesForShare = 50;

    private readonly StandIn _standIn;
    private readonly SeriesOutputs _series;
    private readonly double[] _celsius;
    private readonly Lazy<double[][][]> _shares;

    /// <summary>Draw it.</summary>
    /// <param name="standIn">The engine's stand-in.</param>
    /// <param name="series">Outputs of the curves.</param>
    /// <param name="celsius">Temperature of the typical split, by report. [°C]</param>
    /// <param name="draws">Draws of the lot.</param>
    /// <param name="drawer">Draws pieces.</param>
    /// <param name="request">Band.</param>
    internal LotOutlook(StandIn standIn, SeriesOutputs series, double[] celsius, IReadOnlyList<LotDraw> draws, PieceDrawer drawer, LearningRequest request)
    {
        (_standIn, _series, _celsius) = (standIn, series, celsius);
        Pieces = Tracks([.. draws.Select(drawer.Any)]);
        Middles = Tracks([.. draws.Select(drawer.Middle)]);
        Window = Bands.Window(series.Days, Pieces, request.BandLow, request.BandHigh);
        LotWindow = Bands.Window(series.Days, Middles, request.BandLow, request.BandHigh);
        _shares = new(() => ShareCores(draws, drawer));
    }

    /// <summary>One split for each draw.</summary>
    internal Track[] Pieces { get; }

    /// <summary>The middle split of each draw.</summary>
    internal Track[] Middles { get; }

    /// <summary>When a split drawn from the lot is in the band.</summary>
    internal ReadyWindow Window { get; }

    /// <summary>When the middle one is.</summary>
    internal ReadyWindow LotWindow { get; }

    /// <summary>Cores of many splits of the same draw, for some draws: by draw, split and report.</summary>
    internal double[][][] Shares => _shares.Value;

    /// <summary>Core of the middle split.</summary>
    internal IReadOnlyList<Spread> MiddleCore() => Each(report => [.. Middles.Select(track => track.Core[report])]);

    /// <summary>Core of a split.</summary>
    internal IReadOnlyList<Spread> Core() => Each(report => [.. Pieces.Select(track => track.Core[report])]);

    /// <summary>Part of the splits whose core is in the band.</summary>
    internal IReadOnlyList<Spread> ShareInBand(double low, double high) => Each(report =>
        [.. Shares.Select(lot => lot.Count(core => core[report] >= low && core[report] <= high) / (double)lot.Length)]);

    /// <summary>Bands of one observed split.</summary>
    internal PieceForecast Observed(string name, DrawnPiece[] drawn, LearningRequest request)
    {
        var tracks = Tracks(drawn);
        double[] ready = [.. tracks.Select(track => MassAt(track, request.BandHigh)).Where(double.IsFinite)];
        var (low, median, high) = Bands.Of(tracks);
        return new(
            name, low, median, high, Bands.Window(_series.Days, tracks, request.BandLow, request.BandHigh),
            2 * ready.Length >= tracks.Length ? Quantiles.Of(ready) : null);
    }

    private double MassAt(Track track, double core)
    {
        var day = Bands.FirstAtOrBelow(_series.Days, track.Core, core, 0);
        if (double.IsInfinity(day)) return double.NaN;
        var after = Array.FindIndex(_series.Days, report => report >= day);
        if (after <= 0) return track.Mass[0];
        var part = (day - _series.Days[after - 1]) / (_series.Days[after] - _series.Days[after - 1]);
        return track.Mass[after - 1] + part * (track.Mass[after] - track.Mass[after - 1]);
    }

    private Track[] Tracks(DrawnPiece[] drawn)
    {
        var tracks = new Track[drawn.Length];
        Parallel.For(0, drawn.Length, Reader, (i, _, reader) =>
        {
            tracks[i] = reader.Track(drawn[i]);
            return reader;
        }, _ => { });
        return tracks;
    }

    private double[][][] ShareCores(IReadOnlyList<LotDraw> draws, PieceDrawer drawer)
    {
        var every = Math.Max(1, draws.Count / SharesFrom);
        DrawnPiece[][] lots = [.. draws.Where((_, i) => i % every == 0).Select(draw => Enumerable.Range(0, PiecesForShare).Select(_ => drawer.Any(draw)).ToArray())];
        var cores = new double[lots.Length][][];
        Parallel.For(0, lots.Length, Reader, (i, _, reader) =>
        {
            cores[i] = [.. lots[i].Select(piece => reader.Core(piece))];
            return reader;
        }, _ => { });
        return cores;
    }

    private TrackReader Reader() => new(_standIn, _series, _celsius);

    private Spread[] Each(Func<int, double[]> values) => [.. Enumerable.Range(0, _series.Days.Length).Select(report => Quantiles.Of(values(report)))];
}
