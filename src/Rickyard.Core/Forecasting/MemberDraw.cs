namespace Rickyard.Core.Forecasting;

/// <summary>What makes one member of an ensemble differ from the typical split: standard normal numbers, one for each unknown.</summary>
/// <param name="Start">Start moisture.</param>
/// <param name="Rate">Structure factor on diffusion.</param>
/// <param name="FreeWater">Free water.</param>
/// <param name="Bark">Bark conductance.</param>
/// <param name="Density">Basic density.</param>
/// <param name="Size">Width of the piece.</param>
/// <param name="Sorption">Isotherm.</param>
public sealed record MemberDraw(double Start, double Rate, double FreeWater, double Bark, double Density, double Size, double Sorption)
{
    /// <summary>The typical split: every unknown at its middle.</summary>
    public static MemberDraw Typical { get; } = new(0, 0, 0, 0, 0, 0, 0);

    /// <summary>Members spread evenly over each unknown (Latin hypercube: McKay, Beckman, Conover 1979, Technometrics 21: 239), the same for the same seed.</summary>
    /// <param name="count">Number of members.</param>
    /// <param name="seed">Decides the pairing of values.</param>
    public static MemberDraw[] Spread(int count, int seed)
    {
        var columns = Enumerable.Range(0, 7).Select(unknown => LatinHypercube.Column(count, seed, unknown)).ToArray();
        return [.. Enumerable.Range(0, count).Select(i =>
            new MemberDraw(columns[0][i], columns[1][i], columns[2][i], columns[3][i], columns[4][i], columns[5][i], columns[6][i]))];
    }
}
