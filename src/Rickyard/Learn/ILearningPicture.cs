using Rickyard.Core.Learning;

namespace Rickyard.Learn;

/// <summary>Draws a forecast that has learnt: curves with the readings among them, and the share of splits in the band.</summary>
internal interface ILearningPicture
{
    /// <summary>As SVG.</summary>
    byte[] Svg(LearningRun run);

    /// <summary>As PNG.</summary>
    byte[] Png(LearningRun run);
}
