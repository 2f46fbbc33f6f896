using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>
/// Every observation beside what the others lead one to expect: draws are weighted by one over the density of the observation, which takes it out again (Gelfand, Dey and Chang
/// 1992, Bayesian Statistics 4: 147, from memory), with the largest weights cut.
/// </summary>
internal static class ObservationFits
{
    private const double Percent = 100;

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<ObservationFit> Of(IReadOnlyList<Observation> observations, IReadOnlyList<LotDraw> draws, PieceDrawer drawer) =>
        [.. observations.Select((observation, number) => Fit(observation, [.. draws.Select(draw => draw.Chances[number])], drawer))];

    private static ObservationFit Fit(Observation observation, TermChance[] chances, PieceDrawer drawer)
    {
        double[] weights = [.. chances.Select(chance => Math.Exp(-Math.Max(chance.LogDensity, -30)))];
        var most = 50 * weights.Average() / Math.Sqrt(weights.Length);
        weights = [.. weights.Select(weight => Math.Min(weight, Math.Max(most, weights.Average())))];
        double[] values = [.. chances.Select(chance => chance.Expected + chance.Spread * drawer.Normally())];
        var (value, scale, unit, isLog) = InUnit(observation);
        double Shown(double one) => isLog ? Math.Exp(one) * scale : one * scale;
        var spread = Quantiles.Of(values, weights, 0.05, 0.95);
        return new(observation, value, new(Shown(spread.Low), Shown(spread.Middle), Shown(spread.High)), unit, chances.Average(chance => chance.Wrong));
    }

    private static (double? Value, double Scale, string Unit, bool IsLog) InUnit(Observation observation) => observation switch
    {
        PinObservation pin => (Percent * pin.Corrected.Moisture, Percent, "% dry basis", false),
        OvenObservation oven => (Percent * oven.Moisture, Percent, "% dry basis", false),
        PromiseObservation promise => (Percent * promise.Moisture, Percent, "% dry basis", true),
        MassObservation mass => (mass.Kilograms, 1, "kg", true),
        DryMassObservation dry => (dry.Kilograms, 1, "kg", true),
        _ => (null, 1, "chance", false),
    };
}
