namespace Rickyard.Core.Racks;

/// <summary>How much sun reaches a rack.</summary>
public enum RackSun
{
    /// <summary>Sun for most of the day.</summary>
    Full,

    /// <summary>About half the day, or under light trees.</summary>
    Part,

    /// <summary>Sky light only.</summary>
    Shade,
}
