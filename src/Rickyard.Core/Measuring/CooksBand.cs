using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>The moisture a cook wants, as their own meter shows it; kept as given, to be translated for each wood.</summary>
/// <param name="Low">Lower edge on the display. [kg kg⁻¹ on the meter's scale]</param>
/// <param name="High">Upper edge on the display. [kg kg⁻¹ on the meter's scale]</param>
/// <param name="Scale">The scale or species setting of the meter.</param>
/// <param name="Species">The wood in which the cook found it; null: whatever is dried, the display shall show this.</param>
public sealed record CooksBand(double Low, double High, MeterScale Scale, Species? Species);
