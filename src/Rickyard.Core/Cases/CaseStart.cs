using NodaTime;

namespace Rickyard.Core.Cases;

/// <summary>State of the wood at the start: one moisture throughout, or core with shell and end.</summary>
/// <param name="Core">Moisture, of the whole piece when shell and end are null, else of its core. [kg kg⁻¹]</param>
/// <param name="Shell">Under bare faces, or null. [kg kg⁻¹]</param>
/// <param name="End">Under end grain, or null. [kg kg⁻¹]</param>
/// <param name="IsGreen">Whether the moisture was taken from the species ("green") and so carries its spread.</param>
/// <param name="Celsius">Wood temperature. [°C]</param>
/// <param name="At">Calendar day of the start; midnight, local standard time.</param>
public sealed record CaseStart(double Core, double? Shell, double? End, bool IsGreen, double Celsius, LocalDate At)
{
    /// <summary>Whether the day was given; without it the calendar means nothing and only days from the start are told.</summary>
    public bool IsDated { get; init; } = true;
}
