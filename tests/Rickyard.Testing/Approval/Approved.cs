namespace Rickyard.Testing.Approval;

/// <summary>Texts that a person has looked at and approved, in Approved/ of the test project.</summary>
public static class Approved
{
    /// <summary>Passes when the text is the approved one; else writes it beside as .received.txt, to be looked at and renamed.</summary>
    /// <param name="project">Folder of the test project below tests/.</param>
    /// <param name="name">Name of the text.</param>
    /// <param name="text">What came out.</param>
    public static void Check(string project, string name, string text)
    {
        var folder = RepositoryFolder.Of("tests", project, "Approved");
        var (approved, received) = (Path.Combine(folder, $"{name}.approved.txt"), Path.Combine(folder, $"{name}.received.txt"));
        var plain = Plain(text);
        var wanted = File.Exists(approved) ? Plain(File.ReadAllText(approved)) : "";
        if (plain == wanted)
        {
            File.Delete(received);
            return;
        }

        Directory.CreateDirectory(folder);
        File.WriteAllText(received, plain);
        throw new ApprovalException($"{name} differs from what was approved in {FirstDifference(wanted, plain)}; compare {Path.GetFileName(received)} with {Path.GetFileName(approved)}, and rename it if it is right.");
    }

    private static string Plain(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";

    private static string FirstDifference(string wanted, string plain)
    {
        var (left, right) = (wanted.Split('\n'), plain.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(left.Length, right.Length)).First(index => left.ElementAtOrDefault(index) != right.ElementAtOrDefault(index));
        return $"line {line + 1}: approved \"{left.ElementAtOrDefault(line)}\", received \"{right.ElementAtOrDefault(line)}\"";
    }
}
