using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;

namespace Rickyard.Testing.Measuring;

/// <summary>Pieces of oak dried in a room.</summary>
public static class DriedPiece
{
    private const double Density = 560;

    /// <summary>A usual piece of a shape, 40 cm long.</summary>
    public static Split Of(SplitShape shape)
    {
        Length radius = Length.FromMetres(0.10), length = Length.FromMetres(0.40);
        return shape switch
        {
            SplitShape.Wedge => Split.Wedge(radius, Angle.FromDegrees(60), length),
            SplitShape.HalfRound => Split.HalfRound(radius, length),
            SplitShape.Round => Split.Round(radius, length),
            SplitShape.InnerWedge => Split.InnerWedge(Length.FromMetres(0.05), radius, Angle.FromDegrees(60), length),
            _ => Split.Block(radius, Length.FromMetres(0.06), length),
        };
    }

    /// <summary>Its field after some days at 20 °C and 60 % relative humidity. [kg kg⁻¹]</summary>
    public static double[] InRoom(SplitGrid grid, double moisture, double days)
    {
        var air = IndoorAir.Surroundings(Temperature.FromCelsius(20), RelativeHumidity.FromPercent(60), grid.Split.SurfaceDiameter);
        var solver = new SplitSolver([grid], MobilityTable.Of(new(Density, 1e-9)), [new LaneWood(Density)], AirSeries.Steady(air));
        solver.Moisture.Fill(moisture);
        solver.SetCelsius(20);
        solver.AdvanceTo(days * 86400);
        return solver.MoistureOf(0);
    }
}
