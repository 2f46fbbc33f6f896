namespace Rickyard.Core.Boxes.Schedules;

/// <summary>When one class of a charge comes out of the dry stream, and what it is then and after its rest.</summary>
/// <param name="Class">Number of the class in the charge.</param>
/// <param name="PullDay">When drying stops for it, from loading; null where it does not get there in time. [d]</param>
/// <param name="RestDays">Closed rest after that. [d]</param>
/// <param name="MeanAtPull">Mean moisture of its typical split when pulled. [kg kg⁻¹]</param>
/// <param name="CoreAtPull">Its core. [kg kg⁻¹]</param>
/// <param name="ShellAtPull">Its shell. [kg kg⁻¹]</param>
/// <param name="MassAtPull">What the typical split then weighs. [kg]</param>
/// <param name="MassAtLoading">What it weighed when loaded. [kg]</param>
/// <param name="Mean">At the end of the rest. [kg kg⁻¹]</param>
/// <param name="Core">At the end. [kg kg⁻¹]</param>
/// <param name="Shell">At the end. [kg kg⁻¹]</param>
public sealed record ClassPull(
    int Class, double? PullDay, double RestDays, double MeanAtPull, double CoreAtPull, double ShellAtPull, double MassAtPull, double MassAtLoading,
    double Mean, double Core, double Shell)
{
    /// <summary>Core less shell at the end. [kg kg⁻¹]</summary>
    public double Gap => Core - Shell;
}
