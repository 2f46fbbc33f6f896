using Rickyard.Core.Cases;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary>Reads a case from its file; whatever is wrong goes to the reading.</summary>
internal static class CaseFile
{
    public static DryingCase? Read(string path, OptionReading reading)
    {
        var text = InputFiles.ReadText(path);
        foreach (var problem in text.Problems) reading.Wrong(problem);
        if (!text.TryGet(out var json)) return null;
        var drying = CaseReader.Read(json, Path.GetFileName(path));
        foreach (var problem in drying.Problems) reading.Wrong(problem);
        return drying.Value;
    }

    /// <summary>The folder from which a case's own paths are meant.</summary>
    public static string FolderOf(string path) => Path.GetDirectoryName(Path.GetFullPath(path))!;
}
