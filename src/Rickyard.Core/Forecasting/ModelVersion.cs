namespace Rickyard.Core.Forecasting;

/// <summary>Names the physics and constants behind a run, so that old answers can be told from new ones.</summary>
public static class ModelVersion
{
    /// <summary>Changes whenever an equation or constant does.</summary>
    public const string Current = "2026.1";
}
