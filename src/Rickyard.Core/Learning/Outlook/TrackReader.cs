using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning.StandIns;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Reads curves of drawn pieces off the stand-in.</summary>
internal sealed class TrackReader(StandIn standIn, SeriesOutputs series, double[] celsius)
{
    private readonly double[] _kernel = new double[standIn.Members];

    /// <summary>All curves of a piece.</summary>
    internal Track Track(in DrawnPiece piece)
    {
        var track = new Track(series.Days.Length);
        standIn.Feel(piece.Numbers, _kernel);
        for (var report = 0; report < series.Days.Length; report++)
        {
            (track.Core[report], track.Shell[report], track.End[report]) = (Moisture(piece, series.Core[report]), Moisture(piece, series.Shell[report]), Moisture(piece, series.End[report]));
            track.Mean[report] = Moisture(piece, series.Mean[report]);
            track.Mass[report] = Value(piece, series.DryMass[report]) * piece.MassFactor * (1 + track.Mean[report]);
            track.Celsius[report] = celsius[report];
            track.Loss[report] = 1 - track.Mass[report] / track.Mass[0];
        }

        return track;
    }

    /// <summary>The core alone.</summary>
    internal double[] Core(in DrawnPiece piece)
    {
        standIn.Feel(piece.Numbers, _kernel);
        var core = new double[series.Days.Length];
        for (var report = 0; report < core.Length; report++) core[report] = Moisture(piece, series.Core[report]);
        return core;
    }

    /// <summary>Any one output of a piece, its factor included.</summary>
    internal double At(in DrawnPiece piece, int output)
    {
        standIn.Feel(piece.Numbers, _kernel);
        return Moisture(piece, output);
    }

    private double Moisture(in DrawnPiece piece, int output) => piece.Factor * Value(piece, output);

    private double Value(in DrawnPiece piece, int output) => Math.Exp(standIn.Log(output, piece.Numbers, _kernel) + standIn.OfWeather(output, piece.Weather));
}
