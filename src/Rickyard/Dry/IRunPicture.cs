using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>Draws a run: the split cut open at its snapshots, and the curves.</summary>
internal interface IRunPicture
{
    /// <summary>As SVG.</summary>
    byte[] Svg(DryingRun run);

    /// <summary>As PNG.</summary>
    byte[] Png(DryingRun run);
}
