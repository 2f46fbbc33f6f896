using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>A split to be dried in steady air of two temperatures.</summary>
public sealed record WarmthQuestion
{
    /// <summary>The split.</summary>
    public required Split Split { get; init; }

    /// <summary>What its wood has of its own.</summary>
    public required LaneWood Wood { get; init; }

    /// <summary>Vessel class, for the free water.</summary>
    public required Anatomy Anatomy { get; init; }

    /// <summary>At the start, the same throughout. [kg kg⁻¹]</summary>
    public required double StartMoisture { get; init; }

    /// <summary>Moisture that core and mean are to reach. [kg kg⁻¹]</summary>
    public required double Target { get; init; }

    /// <summary>The cooler air. [°C]</summary>
    public required double FromCelsius { get; init; }

    /// <summary>The warmer air. [°C]</summary>
    public required double ToCelsius { get; init; }

    /// <summary>Relative humidity of the cooler air, 0 to 1.</summary>
    public required double FromHumidity { get; init; }

    /// <summary>Relative humidity of the warmer air, 0 to 1; null: the cooler air is warmed and nothing added.</summary>
    public double? ToHumidity { get; init; }

    /// <summary>Air speed, the same in both. [m s⁻¹]</summary>
    public required double Speed { get; init; }

    /// <summary>Air pressure. [Pa]</summary>
    public double Pressure { get; init; } = 101325;

    /// <summary>The typical split of a case, from its start.</summary>
    /// <param name="drying">The case; its own air is not used.</param>
    /// <param name="target">[kg kg⁻¹]</param>
    /// <param name="fromCelsius">[°C]</param>
    /// <param name="toCelsius">[°C]</param>
    /// <param name="fromHumidity">0 to 1.</param>
    /// <param name="speed">[m s⁻¹]</param>
    public static WarmthQuestion Of(DryingCase drying, double target, double fromCelsius, double toCelsius, double fromHumidity, double speed) => new()
    {
        Split = drying.Split,
        Wood = MemberWood.Of(drying, MemberDraw.Typical).Wood,
        Anatomy = drying.Species.Anatomy,
        StartMoisture = drying.Start.Core,
        Target = target,
        FromCelsius = fromCelsius,
        ToCelsius = toCelsius,
        FromHumidity = fromHumidity,
        Speed = speed,
    };
}
