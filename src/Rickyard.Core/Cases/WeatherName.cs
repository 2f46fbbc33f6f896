namespace Rickyard.Core.Cases;

/// <summary>Weather as a case names it; whoever runs the case turns it into hours.</summary>
/// <param name="File">Path as written in the case, or null.</param>
/// <param name="NormalsPlace">Place whose monthly normals are meant, or null. Exactly one of the two is set.</param>
public sealed record WeatherName(string? File, string? NormalsPlace);
