namespace Rickyard.Commands;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The program or the machine failed.</summary>
    public const int Failed = 1;

    /// <summary>What was given cannot be used.</summary>
    public const int BadInput = 2;

    /// <summary>For --help.</summary>
    public const string Meaning = "0 done; 2 what was given cannot be used, every problem is named; 1 the program or the machine failed.";
}
