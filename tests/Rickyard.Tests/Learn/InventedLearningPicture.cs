using System.Text;
using Rickyard.Core.Learning;
using Rickyard.Learn;

namespace Rickyard.Tests.Learn;

/// <summary>Draws nothing, but says what was asked.</summary>
internal sealed class InventedLearningPicture : ILearningPicture
{
    public byte[] Svg(LearningRun run) => Encoding.UTF8.GetBytes("svg");

    public byte[] Png(LearningRun run) => Encoding.UTF8.GetBytes("png");
}
