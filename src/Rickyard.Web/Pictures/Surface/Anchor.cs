namespace Rickyard.Web.Pictures.Surface;

/// <summary>Which part of a text stands at its point.</summary>
public enum Anchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}
