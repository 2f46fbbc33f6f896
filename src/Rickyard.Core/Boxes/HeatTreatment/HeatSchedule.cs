namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>A published heat treatment: the coldest core of a batch must hold a temperature continuously for some minutes.</summary>
/// <param name="Name">Number of the schedule; texts of different years print different figures under one number.</param>
/// <param name="Celsius">Core temperature. [°C]</param>
/// <param name="Minutes">How long it must be held. [min]</param>
/// <param name="Use">What it is asked for.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Mark">How it was seen there.</param>
public sealed record HeatSchedule(string Name, double Celsius, double Minutes, string Use, string Source, string Mark);
