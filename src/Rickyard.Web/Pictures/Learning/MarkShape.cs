namespace Rickyard.Web.Pictures.Learning;

/// <summary>How a reading is marked; kinds differ in shape, not in colour.</summary>
internal enum MarkShape
{
    /// <summary>Pins in a fresh core: a full circle.</summary>
    Core,

    /// <summary>Pins in a split face: a hollow diamond.</summary>
    Face,

    /// <summary>Pins in the round of the log: a hollow triangle.</summary>
    Side,

    /// <summary>Pins in end grain: a hollow square.</summary>
    End,

    /// <summary>An oven test: a full square.</summary>
    Oven,

    /// <summary>A weighing: a full triangle.</summary>
    Mass,

    /// <summary>A promise: a hollow circle.</summary>
    Promise,

    /// <summary>What has no moisture of its own (signs, dry masses): a tick at the foot.</summary>
    Tick,
}
