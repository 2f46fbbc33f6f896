using System.Text;
using Rickyard.Core.Drying;
using Rickyard.Dry;

namespace Rickyard.Tests.Commands;

/// <summary>Draws nothing, but says what was asked.</summary>
internal sealed class InventedPicture : IRunPicture
{
    public byte[] Svg(DryingRun run) => Encoding.UTF8.GetBytes("svg");

    public byte[] Png(DryingRun run) => Encoding.UTF8.GetBytes("png");
}
