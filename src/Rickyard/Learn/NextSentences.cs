using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>What to read next: the readings that would tell most, what they cost, and how many splits to probe.</summary>
internal static class NextSentences
{
    private const int Most = 3;
    private const double WorthDays = 0.5;

    public static IReadOnlyList<string> Of(LearningRun run)
    {
        var worth = run.Next.Where(gain => gain.DaysGained >= WorthDays).GroupBy(Kind).Take(Most).Select(Sentence).ToList();
        return worth.Count > 0 ? worth : ["No single reading today would make the day much surer; what is left is the weather ahead and how the splits differ."];
    }

    public static string Probe(LearningRun run) => Invariant(
        $"To know the mean core of the lot today to ±2 points with 9 chances in 10, probe the cores of {run.Probe.Pieces} splits taken from all over the stack (they differ by {100 * run.Probe.SpreadBetweenPieces:0.0} points, one standard deviation).");

    /// <summary>What can go wrong where readings open or heat wood; empty where none does.</summary>
    public static IReadOnlyList<string> Cautions(LearningRun run)
    {
        var asked = run.Next.Where(gain => gain.DaysGained >= WorthDays).GroupBy(Kind).Take(Most).Select(kind => kind.First()).ToList();
        return
        [
            .. asked.Any(gain => gain.GivesUpPiece) || run.Probe.Pieces > 0 ? [Splitting] : Array.Empty<string>(),
            .. asked.Any(IsOven) ? [Oven] : Array.Empty<string>(),
        ];
    }

    private const string Splitting = "Splitting and sawing: eye protection, boots, a steady block, nobody within reach of axe or maul, no loose sleeves or gloves at a turning blade.";
    private const string Oven = "Oven or microwave: wood can char and catch fire. 103 °C and no more, low power and short bursts in a microwave, a window open, stay beside it, a fire extinguisher at hand.";

    private static bool IsOven(ReadingGain gain) => gain.Words.Contains("oven", StringComparison.OrdinalIgnoreCase);

    /// <summary>The same reading of more or fewer splits is of one kind.</summary>
    private static (PinPlace? Place, string Piece, bool IsOven) Kind(ReadingGain gain) => (gain.Pins?.Place, gain.Piece, IsOven(gain));

    private static string Sentence(IEnumerable<ReadingGain> kind)
    {
        var (best, others) = (kind.First(), kind.Skip(1).Select(gain => $"{gain.Words} ({Days(gain.DaysGained)} days)").ToList());
        var less = others.Count > 0 ? $" For less work: {string.Join("; ", others)}." : "";
        return $"{char.ToUpperInvariant(best.Words[0])}{best.Words[1..]}: {Days(best.DaysGained)} days gained (the 8-in-10 range of the lot's day goes from {Days(best.DaysNow)} to about {Days(best.DaysAfter)} days).{less} {Cost(best)}";
    }

    private static string Days(double days) => days < 9.95 ? Invariant($"{days:0.#}") : Invariant($"{days:0}");

    private static string Cost(ReadingGain gain) => gain switch
    {
        { GivesUpPiece: false } => "It costs no wood.",
        { Piece.Length: > 0 } => $"It gives up piece {gain.Piece} for further weighings.",
        _ => "What is opened can no longer stand for the others; burn it first.",
    };
}
