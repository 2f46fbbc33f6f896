namespace Rickyard.Core.Splits;

/// <summary>How a piece was cut from the log.</summary>
public enum SplitShape
{
    /// <summary>A sector of the log from pith to bark, opened by an angle.</summary>
    Wedge,

    /// <summary>Half of a small log: a wedge of 180°.</summary>
    HalfRound,

    /// <summary>An unsplit piece of a log: bark all round, only the ends bare.</summary>
    Round,

    /// <summary>A wedge whose heart has been split off: bare on the inside as well.</summary>
    InnerWedge,

    /// <summary>Squared wood with four bare sides.</summary>
    Block,
}
