namespace Rickyard.Core.Boxes;

/// <summary>What has gone into and out of a box since the start, each kind by itself, so that water and heat can be checked against what is in it.</summary>
internal sealed class BoxBooks
{
    /// <summary>Heat in. [J]</summary>
    internal double Heater { get; private set; }

    /// <summary>Heat in. [J]</summary>
    internal double Fan { get; private set; }

    /// <summary>Heat in. [J]</summary>
    internal double Sun { get; private set; }

    /// <summary>Electricity in, which becomes heat. [J]</summary>
    internal double Dehumidifier { get; private set; }

    /// <summary>Heat taken by the charge. [J]</summary>
    internal double ToCharge { get; private set; }

    /// <summary>Heat taken by the walls. [J]</summary>
    internal double ToWalls { get; private set; }

    /// <summary>Of that, from vapour that condensed on them. [J]</summary>
    internal double OnWalls { get; private set; }

    /// <summary>Given back by vapour that was taken out or ran off the wood as dew. [J]</summary>
    internal double Returned { get; private set; }

    /// <summary>Of what the walls took, gone outside. [J]</summary>
    internal double ThroughWalls { get; private set; }

    /// <summary>Heat content of air that left, less that of air that came in. [J]</summary>
    internal double Aired { get; private set; }

    /// <summary>Heat content of water that dripped off or was taken out. [J]</summary>
    internal double Drained { get; private set; }

    /// <summary>Vapour that left with air, less what came in. [kg]</summary>
    internal double VaporAired { get; private set; }

    /// <summary>Water that dripped off walls and wood. [kg]</summary>
    internal double Dripped { get; private set; }

    /// <summary>Water the dehumidifier took out. [kg]</summary>
    internal double Dehumidified { get; private set; }

    /// <summary>All heat that came in. [J]</summary>
    internal double In => Heater + Fan + Sun + Dehumidifier;

    /// <summary>Heat that went out, and water. [J], [kg]</summary>
    internal (double Heat, double Water) Out => (ThroughWalls + Aired + Drained, VaporAired + Dripped + Dehumidified);

    /// <summary>Book a step.</summary>
    internal void Add(double step, in StepHeat heat)
    {
        Heater += step * heat.Heater;
        Fan += step * heat.Fan;
        Sun += step * heat.Sun;
        Dehumidifier += step * heat.Exchange.DehumidifierPower;
        ToCharge += step * heat.ToCharge;
        ToWalls += step * heat.ToWalls;
        OnWalls += step * heat.OnWalls;
        Returned += step * heat.Returned;
        ThroughWalls += step * heat.ThroughWalls;
        Aired += step * (heat.AirOut - heat.AirIn);
        Drained += step * heat.Drained;
        VaporAired += step * (heat.Exchange.Out * heat.Exchange.RatioOut - heat.Exchange.In * heat.Exchange.RatioIn);
        Dripped += step * (heat.Exchange.OnWalls + heat.DripOfWood);
        Dehumidified += step * heat.Exchange.Dehumidified;
    }

    /// <summary>Book a charge taken out into the open: its water goes to the air there, its heat through nobody's walls, and what the box still held is lost.</summary>
    internal void AddInTheOpen(double heatToCharge, double vapor, double vaporHeat)
    {
        ToCharge += heatToCharge;
        VaporAired += vapor;
        Aired += vaporHeat - heatToCharge;
    }

    /// <summary>Book a box left open: its air and walls have gone to the state of outside.</summary>
    internal void AddOpened(double wallHeat, double airHeat, double vapor)
    {
        ThroughWalls += wallHeat;
        Aired += airHeat;
        VaporAired += vapor;
    }
}
