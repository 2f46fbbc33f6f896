namespace Rickyard.Core.Boxes;

/// <summary>What held a part of the run back, and by how much.</summary>
/// <param name="Stage">Number of the stage, from 0.</param>
/// <param name="FromDay">[d]</param>
/// <param name="ToDay">[d]</param>
/// <param name="Limit">The largest of the parts below, or the heater.</param>
/// <param name="Shortfall">By how far the air stayed below its setting, mean. [K]</param>
/// <param name="VaporShare">Of the drop in vapour pressure from core to the air outside, the part from the box's air to outside: what a larger vent could win. 0 to 1.</param>
/// <param name="SurfaceShare">The part between surface and box air. 0 to 1.</param>
/// <param name="InsideShare">The part inside the wood. 0 to 1.</param>
public sealed record StageLimit(
    int Stage, double FromDay, double ToDay, BoxLimit Limit, double Shortfall, double VaporShare, double SurfaceShare, double InsideShare);
