using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads what moves the air in a box.</summary>
internal static class FanSection
{
    /// <summary>Part of the floor that a charge leaves to the stream; judgement. [–]</summary>
    private const double FreeShare = 0.4;

    /// <summary>Electric power of a small fan for its flow; judgement. [W per m³ s⁻¹]</summary>
    private const double PowerForFlow = 500;

    private const double UsualSpeed = 0.5;

    /// <summary>The fan; a box without one has the slow stream that its own warmth drives.</summary>
    public static BoxFan Read(CaseObject box, BoxInside inside, CaseFindings findings)
    {
        var free = FreeShare * inside.Floor;
        if (!box.Has("fan")) findings.Assume(Invariant($"No fan was given: the air moves by its own warmth, at {SurfaceTransfer.StillIndoorSpeed:0.##} m/s (judgement)."));
        if (box.Group("fan", "speed", "flow", "power") is not { } fan) return new(SurfaceTransfer.StillIndoorSpeed, SurfaceTransfer.StillIndoorSpeed * free, 0);
        var (speed, flow) = (fan.Quantity("speed", BoxLimits.FanSpeed), fan.Quantity("flow", BoxLimits.FanFlow));
        return Complete(fan, speed ?? SpeedOf(flow, free), flow ?? (speed ?? UsualSpeed) * free, findings);
    }

    private static double SpeedOf(double? flow, double free) => flow is { } known ? Math.Clamp(known / free, BoxLimits.FanSpeed.Lowest, BoxLimits.FanSpeed.Highest) : UsualSpeed;

    private static BoxFan Complete(CaseObject fan, double speed, double flow, CaseFindings findings)
    {
        if (!fan.Has("speed")) findings.Assume(Invariant($"The speed of the air at the wood was not given: {speed:0.##} m/s{(fan.Has("flow") ? ", the fan's flow through 40 % of the floor" : "")} (judgement)."));
        if (!fan.Has("flow")) findings.Assume(Invariant($"The air the fan carries round was not given: {3600 * flow:0} m³/h, its speed through 40 % of the floor (judgement)."));
        var power = fan.QuantityOr("power", BoxLimits.FanPower, PowerForFlow * flow, Invariant($"The fan's power was not given: {PowerForFlow * flow:0} W, 500 W for each m³/s (judgement)."));
        return new(speed, flow, power);
    }
}
