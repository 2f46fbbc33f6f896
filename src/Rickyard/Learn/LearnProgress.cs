using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>Shows progress, and remembers how far it came for when the work is stopped.</summary>
/// <param name="screen">Where.</param>
internal sealed class LearnProgress(Screen screen) : IProgress<double>
{
    private double _part;

    /// <summary>"before the first run of the engine", or how much was done.</summary>
    public string Reached => _part <= 0
        ? "before the first run of the engine was done"
        : Invariant($"with {100 * _part:0} % of the work done; the readings had not been weighed to the end, so there is no answer yet");

    /// <inheritdoc/>
    public void Report(double value)
    {
        _part = value;
        screen.Progress(value);
    }
}
