using System.Text;
using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Learning;

namespace Rickyard.Learn;

/// <summary>The picture as the pages draw it.</summary>
internal sealed class WebLearningPicture : ILearningPicture
{
    /// <inheritdoc/>
    public byte[] Svg(LearningRun run) => Encoding.UTF8.GetBytes(LearningPicture.Svg(run));

    /// <inheritdoc/>
    public byte[] Png(LearningRun run) => LearningPicture.Png(run);
}
