using Rickyard.Core.Boxes.Schedules;

namespace Rickyard.Schedules;

/// <summary>Draws a schedule: what it trades off, and when to pull what.</summary>
internal interface ISchedulePicture
{
    /// <summary>As SVG.</summary>
    byte[] Svg(ScheduleAnswer answer);

    /// <summary>As PNG.</summary>
    byte[] Png(ScheduleAnswer answer);
}
