using System.Text;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Schedules;

namespace Rickyard.Tests.Commands;

/// <summary>Draws nothing, but says what was asked.</summary>
internal sealed class InventedSchedulePicture : ISchedulePicture
{
    public byte[] Svg(ScheduleAnswer answer) => Encoding.UTF8.GetBytes("svg");

    public byte[] Png(ScheduleAnswer answer) => Encoding.UTF8.GetBytes("png");
}
