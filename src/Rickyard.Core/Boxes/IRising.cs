namespace Rickyard.Core.Boxes;

/// <summary>A function that rises with its argument.</summary>
internal interface IRising
{
    /// <summary>Its value.</summary>
    double At(double x);
}
