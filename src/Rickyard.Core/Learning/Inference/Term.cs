using MathNet.Numerics.Distributions;

namespace Rickyard.Core.Learning.Inference;

/// <summary>One observation as the inference sees it.</summary>
/// <param name="Observation">Its place in the list.</param>
/// <param name="Day">Days from the start. [d]</param>
internal abstract record Term(int Observation, double Day)
{
    /// <summary>Chance that an observation is a mistake, before it is looked at: wrong piece, wrong line, pins in a wet skin; judgement.</summary>
    protected const double MistakeChance = 0.03;

    /// <summary>Chance that it was taken carelessly, and how much wider its error then is; judgement. It also is the bridge by which chains get from one mistake to another.</summary>
    private const double CarelessChance = 0.05, Careless = 5;

    private const double SteadyBeyond = 3;

    /// <summary>How well a piece explains it; the filter learns from it.</summary>
    internal abstract TermChance Chance(in PiecePrediction prediction, ref Discrepancy discrepancy);

    /// <summary>How it pulls at a piece; for a first fit.</summary>
    /// <param name="prediction">What the stand-in says of the piece.</param>
    /// <param name="believed">Whether it is believed even where it is far off: the way there must not call everything a mistake.</param>
    internal abstract Pull Plain(in PiecePrediction prediction, bool believed);

    /// <summary>Pull of a value: far off, it pulls with a steady force (Huber 1964, from memory) if believed, else the weaker the likelier it is a mistake.</summary>
    protected static Pull NumberPull(double value, double expected, double ownVariance, double slope, double flatDensity, bool believed)
    {
        var spread = Math.Sqrt(ownVariance + slope * slope * Discrepancy.Spread * Discrepancy.Spread);
        var doubt = believed
            ? Math.Max(1, Math.Abs(value - expected) / (SteadyBeyond * spread))
            : 1 / Math.Max(Parts(value, expected, spread, flatDensity).Trust, 1e-9);
        return new(expected, value - expected, ownVariance * doubt, slope);
    }

    /// <summary>A value that may be a mistake: a normal density; seldom a careless one, far wider; seldom one that has nothing to do with the piece.</summary>
    protected static TermChance Number(double value, double expected, double variance, double slope, double flatDensity, ref Discrepancy discrepancy)
    {
        var spread = Math.Sqrt(variance);
        var (whole, right, trust) = Parts(value, expected, spread, flatDensity);
        discrepancy.Learn(slope, value - expected, variance, trust);
        return new(Math.Log(whole), 1 - right, expected, spread);
    }

    /// <summary>Density; chance that it is right; how much of a reading it is, a careless one counting by its variance.</summary>
    private static (double Whole, double Right, double Trust) Parts(double value, double expected, double spread, double flatDensity)
    {
        var right = (1 - CarelessChance - MistakeChance) * Normal.PDF(expected, spread, value);
        var careless = CarelessChance * Normal.PDF(expected, Careless * spread, value);
        var whole = right + careless + MistakeChance * flatDensity;
        return (whole, right / whole, (right + careless / (Careless * Careless)) / whole);
    }

    /// <summary>An event that may be a mistake.</summary>
    protected static TermChance Event(double chance, double expected, double spread)
    {
        var whole = (1 - MistakeChance) * chance + MistakeChance / 2;
        return new(Math.Log(whole), MistakeChance / 2 / whole, expected, spread);
    }
}
