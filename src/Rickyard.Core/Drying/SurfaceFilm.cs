using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// The faces of the pieces of a <see cref="LaneGrid"/>: for each, the surface humidity at which what the half cell behind it supplies equals
/// what film and bark carry away (physics.md, F1 to F4). At humidity 1 the surface is wet: more cannot leave than the air takes, and water
/// condenses where the air is more humid than that. Newton in the humidity within a shrinking bracket, from the last one found.
/// </summary>
internal sealed class SurfaceFilm
{
    private const int MostIterations = 40;
    private const double Tolerance = 1e-9;

    /// <summary>Moisture at which a rained-on cell takes no more: 60 %, the limit found for rained-on sticks (Nelson 2000).</summary>
    private const double SoakedMoisture = 0.60;

    /// <summary>Part of the rain on a face that it takes in when dry: judgement, spread by the rack's factor on rain.</summary>
    private const double TakenBySides = 0.3, TakenByEnds = 0.7;

    private readonly LaneGrid _grid;
    private readonly LaneBody[] _bodies;
    private readonly double[] _humidity, _massScale;
    private readonly FaceKind[] _kinds;

    internal SurfaceFilm(LaneGrid grid, LaneBody[] bodies)
    {
        (_grid, _bodies) = (grid, bodies);
        _humidity = new double[grid.OuterCells.Length];
        Array.Fill(_humidity, 0.6);
        _kinds = [.. grid.Layout.OuterFaces.Select(face => face.Kind)];
        _massScale = [.. bodies.Select(body => 1 / body.Wood.BasicDensity)];
    }

    /// <summary>Solve every face at the bodies' present temperature; only the sums are kept.</summary>
    internal void Exchange(ReadOnlySpan<double> state) => Exchange(state, [], []);

    /// <summary>Solve every face, keep the sums, and give fluxes and slopes where wanted.</summary>
    /// <param name="state">Moisture of the cells. [kg kg⁻¹]</param>
    /// <param name="flux">Outflow through each face, or empty. [m³ s⁻¹]</param>
    /// <param name="slope">Its derivative by the cell's moisture, or empty. [m³ s⁻¹]</param>
    internal void Exchange(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        for (var lane = 0; lane < _bodies.Length; lane++) ExchangeLane(lane, state, flux, slope);
    }

    private void ExchangeLane(int lane, ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        var body = _bodies[lane];
        double vapor = 0, byVapor = 0, bySaturation = 0, surfaceVapor = 0, weight = 0;
        for (int face = 0, k = lane; face < _kinds.Length; face++, k += _bodies.Length)
        {
            var moisture = state[_grid.OuterCells[k]];
            var solved = Solve(body, _kinds[face], moisture, _grid.OuterInverseDepths[k], ref _humidity[k]);
            double area = _grid.OuterAreas[k], density = body.Wood.BasicDensity;
            vapor += area * density * solved.Flux;
            byVapor += area * density * solved.ByVapor;
            bySaturation += area * density * solved.BySaturation;
            var size = area * Math.Abs(solved.Flux);
            surfaceVapor += size * _humidity[k] * body.Saturation;
            weight += size;
            if (flux.IsEmpty) continue;
            flux[k] = area * solved.Flux;
            slope[k] = area * solved.ByMoisture;
            Soak(body, _kinds[face], moisture, area * _massScale[lane], ref flux[k], ref slope[k]);
        }

        body.Sums = new(vapor, byVapor, bySaturation, surfaceVapor, weight);
    }

    private static FaceState Solve(LaneBody body, FaceKind kind, double moisture, double inverseDepth, ref double humidity)
    {
        var film = kind == FaceKind.Bark
            ? body.FilmConductance * body.Wood.BarkConductance / (body.FilmConductance + body.Wood.BarkConductance)
            : body.FilmConductance;
        double conductance = film / body.Wood.BasicDensity, saturation = body.Saturation, vapor = body.VaporPressure;
        var offset = kind == FaceKind.End ? 2 : 0;
        var row = body.Row;
        var isotherm = body.Isotherm;
        var potential = row.At(moisture, offset, out var diffusivity);
        if (moisture >= isotherm.Saturation || vapor > saturation)
        {
            var supply = (potential - row.At(isotherm.Saturation, offset, out _)) * inverseDepth;
            var taken = conductance * (saturation - vapor);
            if (supply >= taken)
            {
                humidity = 1;
                return new(taken, 0, -conductance, conductance);
            }
        }

        double low = 0, high = 1, reach = 0, open = conductance * saturation;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            var surface = row.At(isotherm.Moisture(humidity), offset, out var surfaceDiffusivity);
            reach = surfaceDiffusivity * isotherm.Slope(humidity) * inverseDepth;
            var excess = (potential - surface) * inverseDepth - conductance * (humidity * saturation - vapor);
            if (excess > 0) low = humidity; else high = humidity;
            var next = humidity + excess / (reach + open);
            if (!(next >= low && next <= high)) next = 0.5 * (low + high);
            var moved = Math.Abs(next - humidity);
            humidity = next;
            if (moved < Tolerance) break;
        }

        var through = reach / (reach + open);
        return new(
            conductance * (humidity * saturation - vapor), open * diffusivity * inverseDepth / (reach + open),
            -conductance * through, conductance * humidity * through);
    }

    /// <summary>Rain taken in by the cell behind the face, less the wetter it is already.</summary>
    private static void Soak(LaneBody body, FaceKind kind, double moisture, double scale, ref double flux, ref double slope)
    {
        var rain = kind == FaceKind.End ? body.Rain.Ends * TakenByEnds : body.Rain.Sides * TakenBySides;
        if (rain <= 0 || moisture >= SoakedMoisture) return;
        flux -= scale * rain * (SoakedMoisture - moisture) / SoakedMoisture;
        slope += scale * rain / SoakedMoisture;
    }

    /// <summary>One solved face, per area, in units of moisture: flux out [m s⁻¹] and its derivatives.</summary>
    private readonly record struct FaceState(double Flux, double ByMoisture, double ByVapor, double BySaturation);
}
