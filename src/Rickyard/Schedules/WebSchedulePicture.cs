using System.Text;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Schedules;

namespace Rickyard.Schedules;

/// <summary>The picture as the pages draw it.</summary>
internal sealed class WebSchedulePicture : ISchedulePicture
{
    /// <inheritdoc/>
    public byte[] Svg(ScheduleAnswer answer) => Encoding.UTF8.GetBytes(SchedulePicture.Svg(answer));

    /// <inheritdoc/>
    public byte[] Png(ScheduleAnswer answer) => SchedulePicture.Png(answer);
}
