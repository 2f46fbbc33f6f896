namespace Rickyard.Core.Boxes;

/// <summary>What moves the air inside a box; its power becomes heat there.</summary>
/// <param name="Speed">Of the air at the wood. [m s⁻¹]</param>
/// <param name="Flow">Air carried round, which decides how much warmer the shelf is that it reaches first. [m³ s⁻¹]</param>
/// <param name="Power">Electric power, all of it turned into heat inside. [W]</param>
public sealed record BoxFan(double Speed, double Flow, double Power);
