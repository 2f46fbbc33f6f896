namespace Rickyard.Tests.Commands;

/// <summary>What a command line answered.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Results.</param>
/// <param name="Error">Talk.</param>
internal sealed record Spoken(int Code, string Output, string Error)
{
    /// <summary>All of it, for approval.</summary>
    public string Whole => $"exit code {Code}\n--- output\n{Output}--- error\n{Error}";
}
