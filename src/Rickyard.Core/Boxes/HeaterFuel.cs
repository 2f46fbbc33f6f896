namespace Rickyard.Core.Boxes;

/// <summary>What a heater runs on. A flame is always outside the box, behind a heat exchanger.</summary>
public enum HeaterFuel
{
    /// <summary>Electric resistance.</summary>
    Electricity,

    /// <summary>Natural or bottled gas, burned outside the box.</summary>
    Gas,
}
