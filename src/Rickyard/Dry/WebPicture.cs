using System.Text;
using Rickyard.Core.Drying;
using Rickyard.Web.Pictures;

namespace Rickyard.Dry;

/// <summary>The picture as the pages draw it.</summary>
internal sealed class WebPicture : IRunPicture
{
    /// <inheritdoc/>
    public byte[] Svg(DryingRun run) => Encoding.UTF8.GetBytes(RunPicture.Svg(run));

    /// <inheritdoc/>
    public byte[] Png(DryingRun run) => RunPicture.Png(run);
}
