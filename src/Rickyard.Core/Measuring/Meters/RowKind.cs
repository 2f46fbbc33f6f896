namespace Rickyard.Core.Measuring.Meters;

/// <summary>How near the resistance rows used are to the wood.</summary>
public enum RowKind
{
    /// <summary>Measured on this wood or its trade group.</summary>
    Own,

    /// <summary>Measured on near relatives.</summary>
    Related,

    /// <summary>Nothing is published: all woods of its kind.</summary>
    Group,
}
