namespace Rickyard.Screens;

/// <summary>Shows progress at once, on the thread that reports it.</summary>
/// <param name="screen">Where.</param>
internal sealed class ScreenProgress(Screen screen) : IProgress<double>
{
    /// <inheritdoc/>
    public void Report(double value) => screen.Progress(value);
}
