using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring;

/// <summary>The scale or species setting a pin meter was on: a row of the resistance table.</summary>
/// <param name="Name">Name of the row it follows.</param>
public sealed record MeterScale(string Name)
{
    /// <summary>What most meters of North America are marked in.</summary>
    public static MeterScale DouglasFir { get; } = new("Douglas-fir");

    /// <summary>The scale a person named, or what is wrong with the name and which there are.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">Option, key or column it came from.</param>
    public static Result<MeterScale> Find(string text, string field) => throw new NotImplementedException();
}
