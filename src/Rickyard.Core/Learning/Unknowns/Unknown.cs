namespace Rickyard.Core.Learning.Unknowns;

/// <summary>What a case cannot say for certain; the first seven belong to a piece, the others to its rack.</summary>
internal enum Unknown
{
    /// <summary>Start moisture.</summary>
    Start,

    /// <summary>Rate factor of the wood.</summary>
    Rate,

    /// <summary>Free water.</summary>
    FreeWater,

    /// <summary>Bark.</summary>
    Bark,

    /// <summary>Basic density.</summary>
    Density,

    /// <summary>Width.</summary>
    Size,

    /// <summary>Isotherm.</summary>
    Sorption,

    /// <summary>Air between the splits.</summary>
    Wind,

    /// <summary>Rain that reaches them.</summary>
    Rain,

    /// <summary>Sun that reaches them.</summary>
    Sun,
}
