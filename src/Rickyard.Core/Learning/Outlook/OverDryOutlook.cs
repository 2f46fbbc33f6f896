using Rickyard.Core.Forecasting;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>What damp air can give back to splits that are below the band today.</summary>
internal static class OverDryOutlook
{
    /// <summary>Below this share nothing is said. </summary>
    private const double WorthTelling = 0.10;

    /// <summary>Told of a lot, or null where hardly a split is too dry.</summary>
    /// <param name="days">Report times. [d]</param>
    /// <param name="tracks">Splits drawn from the lot.</param>
    /// <param name="request">Band.</param>
    /// <param name="today">[d]</param>
    internal static OverDry? Of(double[] days, Track[] tracks, LearningRequest request, double today)
    {
        var now = Array.FindIndex(days, day => day >= today);
        var below = tracks.Where(track => track.Core[now] < request.BandLow).ToArray();
        if (below.Length < WorthTelling * tracks.Length) return null;
        var celsius = below[0].Celsius[now];
        var humidity = SorptionIsotherm.At(Math.Clamp(celsius, SorptionIsotherm.LowestCelsius, SorptionIsotherm.HighestCelsius)).Activity((request.BandLow + request.BandHigh) / 2);
        var back = Enumerable.Range(now, days.Length - now).FirstOrDefault(report => 2 * below.Count(track => track.Core[report] >= request.BandLow) >= below.Length, -1);
        return new(below.Length / (double)tracks.Length, humidity, back < 0 ? null : days[back]);
    }
}
