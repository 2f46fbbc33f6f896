namespace Rickyard.Web.Pictures.Surface;

/// <summary>A place in a plane, y downward: on the page in its own units (CSS pixels), or in a cut in metre.</summary>
public readonly record struct Point(double X, double Y);
