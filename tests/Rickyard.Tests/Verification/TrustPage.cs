using System.Globalization;
using System.Text.RegularExpressions;

namespace Rickyard.Tests.Verification;

/// <summary>docs/trust.md: words by hand, and between two marks the table as generated.</summary>
internal sealed partial class TrustPage
{
    private const string Begin = "<!-- verify:begin -->\n";
    private const string End = "<!-- verify:end -->";

    /// <summary>Of a number; the rest is the last digit shown, on processors that round otherwise.</summary>
    private const double Tolerance = 0.005;

    private readonly string _path;
    private readonly string _text;

    private TrustPage(string path) => (_path, _text) = (path, File.ReadAllText(path).ReplaceLineEndings("\n"));

    internal string Table => _text[From..To];

    private int From => _text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;

    private int To => _text.IndexOf(End, StringComparison.Ordinal);

    internal static TrustPage Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Rickyard.slnx"))) folder = folder.Parent!;
        return new(Path.Combine(folder.FullName, "docs", "trust.md"));
    }

    internal void WriteReceived(string table) => File.WriteAllText(Path.ChangeExtension(_path, ".received.md"), _text[..From] + table + _text[To..]);

    /// <summary>The first place where two tables differ by more than rounding, or null.</summary>
    internal static string? FirstDifference(string approved, string received)
    {
        string[] one = approved.Split('\n'), other = received.Split('\n');
        if (one.Length != other.Length) return $"{one.Length} lines approved, {other.Length} now";
        return one.Zip(other).Where(pair => !Alike(pair.First, pair.Second)).Select(pair => $"\"{pair.First}\" is now \"{pair.Second}\"").FirstOrDefault();
    }

    private static bool Alike(string one, string other)
    {
        if (Number().Replace(one, "#") != Number().Replace(other, "#")) return false;
        return Number().Matches(one).Zip(Number().Matches(other)).All(pair => Close(pair.First.Value, pair.Second.Value));
    }

    private static bool Close(string one, string other)
    {
        double first = double.Parse(one, CultureInfo.InvariantCulture), second = double.Parse(other, CultureInfo.InvariantCulture);
        var decimals = one.Contains('.', StringComparison.Ordinal) ? one.Length - one.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return Math.Abs(first - second) <= Tolerance * Math.Abs(first) + 1.001 * Math.Pow(10, -decimals);
    }

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
