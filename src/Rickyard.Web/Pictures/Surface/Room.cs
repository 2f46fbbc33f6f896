namespace Rickyard.Web.Pictures.Surface;

/// <summary>A width and a height. [px]</summary>
public readonly record struct Room(double Width, double Height);
