using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Chart;

/// <summary>One line of the chart.</summary>
/// <param name="Name">What it is of.</param>
/// <param name="Values">At each report time. [kg kg⁻¹]</param>
/// <param name="Stroke">How it is drawn.</param>
internal sealed record Curve(string Name, double[] Values, Stroke Stroke);
