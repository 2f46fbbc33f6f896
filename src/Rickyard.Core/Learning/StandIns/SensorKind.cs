namespace Rickyard.Core.Learning.StandIns;

/// <summary>What of a piece the engine is asked for.</summary>
internal enum SensorKind
{
    /// <summary>Whole piece. [kg kg⁻¹]</summary>
    Mean,

    /// <summary>Inner tenth. [kg kg⁻¹]</summary>
    Core,

    /// <summary>Outer 6 mm. [kg kg⁻¹]</summary>
    Shell,

    /// <summary>Outer 6 mm of end grain. [kg kg⁻¹]</summary>
    End,

    /// <summary>Mass. [kg]</summary>
    Mass,

    /// <summary>Oven-dry mass. [kg]</summary>
    DryMass,

    /// <summary>Cross-section at mid-length. [kg kg⁻¹]</summary>
    Section,

    /// <summary>What pins feel. [kg kg⁻¹]</summary>
    Pins,
}
