namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// How far the engine itself may be off for one piece, beyond all its unknowns: a factor on moisture that wanders slowly (an Ornstein-Uhlenbeck process), followed by
/// a one-number Kalman filter (Kennedy and O'Hagan 2001, J. R. Stat. Soc. B 63: 425, from memory, for why; physics.md, L6). Without it fifty weighings would
/// make the forecast surer than the engine deserves.
/// </summary>
internal struct Discrepancy
{
    /// <summary>
    /// Standard deviation: 5 % of the moisture. Judgement: the median miss over measured cases, inputs unknown, is 9 % (docs/trust.md); about half of it is put down to inputs.
    /// </summary>
    internal const double Spread = 0.05;

    /// <summary>Time over which it forgets; judgement. [d]</summary>
    internal const double Memory = 60;

    private double _day;

    /// <summary>At the start, when nothing is known of it.</summary>
    internal static Discrepancy Unknown => new() { Variance = Spread * Spread, _day = double.NegativeInfinity };

    /// <summary>Mean of the factor less 1.</summary>
    internal double Mean { get; private set; }

    /// <summary>Its variance.</summary>
    internal double Variance { get; private set; }

    /// <summary>Covariance of it with itself some days later.</summary>
    internal static double Covariance(double days) => Spread * Spread * Math.Exp(-Math.Abs(days) / Memory);

    /// <summary>Let time pass.</summary>
    internal void To(double day)
    {
        if (day > _day && _day > double.NegativeInfinity)
        {
            var kept = Math.Exp(-(day - _day) / Memory);
            Mean *= kept;
            Variance = kept * kept * Variance + Spread * Spread * (1 - kept * kept);
        }

        _day = day;
    }

    /// <summary>Learn from a reading.</summary>
    /// <param name="slope">Change of the reading with the factor.</param>
    /// <param name="miss">Reading less what was expected.</param>
    /// <param name="variance">Variance of the expected reading, this factor's part included.</param>
    /// <param name="trust">How much the reading is believed, 0 to 1.</param>
    internal void Learn(double slope, double miss, double variance, double trust)
    {
        var gain = trust * Variance * slope / variance;
        Mean += gain * miss;
        Variance = Math.Max(0, Variance * (1 - gain * slope));
    }
}
