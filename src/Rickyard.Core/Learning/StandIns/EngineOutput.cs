namespace Rickyard.Core.Learning.StandIns;

/// <summary>A number the engine is asked for: a sensor at a time. Its natural logarithm is what is stood in for.</summary>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Sensor">What of the piece.</param>
internal readonly record struct EngineOutput(double Day, Sensor Sensor);
