using Rickyard.Core.Drying;

namespace Rickyard.Core.Forecasting;

/// <summary>Air that wood met in a run of a box, for members of an ensemble to meet again.</summary>
/// <param name="Air">Through time, from the start of the case.</param>
/// <param name="Pressure">[Pa]</param>
internal sealed record RecordedAir(AirSeries Air, double Pressure);
