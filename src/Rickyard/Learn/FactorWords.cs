using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>A factor in words: "a fifth slower", "about twice".</summary>
/// <param name="less">Word for below one.</param>
/// <param name="more">Word for above one.</param>
internal sealed class FactorWords(string less, string more)
{
    private const double Hardly = 0.035;

    private static readonly (double Part, string Words)[] Parts =
    [
        (0.05, "a twentieth"), (0.1, "a tenth"), (1 / 7.0, "a seventh"), (0.2, "a fifth"), (0.25, "a quarter"), (1 / 3.0, "a third"), (0.4, "two fifths"), (0.5, "half"),
        (0.6, "three fifths"), (2 / 3.0, "two thirds"), (0.75, "three quarters"), (0.9, "nine tenths"),
    ];

    /// <summary>"a fifth slower".</summary>
    public string Of(double factor) => factor switch
    {
        _ when IsUsual(factor) => "as much",
        < 1 => $"{Part(1 - factor)} {less}",
        < 1.95 => $"{Part(factor - 1)} {more}",
        < 2.05 => "twice as much",
        _ => Invariant($"{factor:0.0} times as much"),
    };

    /// <summary>"between a tenth and a third slower", or from one side of the usual to the other.</summary>
    public string Between(double low, double high) => (low, high) switch
    {
        _ when IsUsual(low) && IsUsual(high) => "within a thirtieth",
        _ when !IsUsual(low) && !IsUsual(high) && high < 1 && Part(1 - high) != Part(1 - low) => $"between {Part(1 - high)} and {Part(1 - low)} {less}",
        _ when !IsUsual(low) && !IsUsual(high) && low > 1 && high < 1.95 && Part(low - 1) != Part(high - 1) => $"between {Part(low - 1)} and {Part(high - 1)} {more}",
        _ when Of(low) == Of(high) => $"near {Of(low)}",
        _ => $"from {Of(low)} to {Of(high)}",
    };

    private static bool IsUsual(double factor) => Math.Abs(factor - 1) < Hardly;

    private static string Part(double part) => Parts.MinBy(one => Math.Abs(Math.Log(one.Part / part))).Words;
}
