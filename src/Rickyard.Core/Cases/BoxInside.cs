namespace Rickyard.Core.Cases;

/// <summary>The room inside a box. [m]</summary>
internal sealed record BoxInside(double Width, double Depth, double Height)
{
    private static readonly string[] Keys = ["width", "depth", "height"];

    /// <summary>[m³]</summary>
    public double Volume => Width * Depth * Height;

    /// <summary>All six sides. [m²]</summary>
    public double Surface => 2 * (Width * Depth + Width * Height + Depth * Height);

    /// <summary>From above. [m²]</summary>
    public double Floor => Width * Depth;

    /// <summary>The longest edge. [m]</summary>
    public double Longest => Math.Max(Width, Math.Max(Depth, Height));

    /// <summary>The room, or null where a problem kept it from being understood.</summary>
    public static BoxInside? Read(CaseObject box)
    {
        if (box.NeededGroup("inside", Keys) is not { } inside) return null;
        var edges = Keys.Select(key => inside.NeededQuantity(key, BoxLimits.Inside)).ToArray();
        return edges.Any(edge => edge is null) ? null : new(edges[0]!.Value, edges[1]!.Value, edges[2]!.Value);
    }
}
