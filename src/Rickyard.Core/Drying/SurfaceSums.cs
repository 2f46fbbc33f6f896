namespace Rickyard.Core.Drying;

/// <summary>What the faces of one piece give off together.</summary>
/// <param name="Vapor">[kg s⁻¹]</param>
/// <param name="ByVapor">Its derivative by the vapour pressure beside the wood, at most 0. [kg s⁻¹ Pa⁻¹]</param>
/// <param name="BySaturation">Its derivative by the saturation pressure at the wood. [kg s⁻¹ Pa⁻¹]</param>
/// <param name="SurfaceVapor">Vapour pressure right at the faces, weighted by flux. [Pa kg s⁻¹]</param>
/// <param name="Weight">Sum of those weights. [kg s⁻¹]</param>
/// <param name="Drip">Dew that the cells behind cannot take and that runs off, at most 0. [kg s⁻¹]</param>
internal readonly record struct SurfaceSums(double Vapor, double ByVapor, double BySaturation, double SurfaceVapor, double Weight, double Drip);
