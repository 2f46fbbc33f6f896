using System.CommandLine;
using Rickyard.Core.Verification;
using Rickyard.Screens;
using Rickyard.Verification;

namespace Rickyard.Commands;

/// <summary><c>rickyard verify</c>: measured cases from the world rerun, predicted against measured.</summary>
internal static class VerifyCommand
{
    /// <summary>Air speed supposed in the heating chamber of Table 20-4, which does not print one: between 1 and 3 m/s it moves the median miss by a point. [m s⁻¹]</summary>
    private const double ChamberSpeed = 2;

    /// <summary>The command.</summary>
    public static Command Build(Screen screen)
    {
        var json = new Option<bool>("--json") { Description = "JSON for machines instead of the table." };
        var command = new TaskCommand("verify", "Measured cases from the world, rerun: predicted against measured.", ["rickyard verify", "rickyard verify --json"]) { json };
        command.SetAction((parsed, cancellation) => Task.Run(() => Run(screen, parsed.GetValue(json), cancellation), cancellation));
        return command;
    }

    private static int Run(Screen screen, bool json, CancellationToken cancellation)
    {
        var report = VerificationRun.Run(new ScreenProgress(screen), HeatingRatios, cancellation);
        screen.Progress(1);
        screen.Output.WriteLine(json ? VerificationJson.Of(report).ToJsonString() : VerificationTable.Plain(report));
        return ExitCode.Done;
    }

    /// <summary>Predicted over printed time of each entry of Table 20-4.</summary>
    internal static IReadOnlyList<double> HeatingRatios() => [.. HeatingTimes.Run(ChamberSpeed).Select(time => 1 + time.RelativeMiss)];
}
