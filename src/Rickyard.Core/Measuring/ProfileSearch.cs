using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>One piece dried in steady air, watched for the moment at which its places come nearest to what was read.</summary>
internal sealed class ProfileSearch
{
    /// <summary>Temperature of the air; the profile hardly depends on it. [°C]</summary>
    internal const double Celsius = 20;

    private const double LongestDays = 8000, FirstDays = 0.25, Growth = 1.05;
    private const int Told = 7;

    private readonly IReadOnlyList<PlaceReading> _readings;
    private readonly SplitSolver _solver;
    private readonly PinView[] _views;

    internal ProfileSearch(DryingCase drying, IReadOnlyList<PlaceReading> readings, double equilibrium, double start)
    {
        _readings = readings;
        var grid = SplitGrid.For(drying.Split);
        var air = IndoorAir.Surroundings(
            Temperature.FromCelsius(Celsius), RelativeHumidity.FromFraction(SorptionIsotherm.At(Celsius).Activity(equilibrium)), drying.Split.SurfaceDiameter);
        var table = MobilityTable.Of(new(drying.BasicDensity, WaterMobility.FreeWaterOf(drying.Species.Anatomy)));
        _solver = new([grid], table, [MemberWood.Of(drying, MemberDraw.Typical).Wood], AirSeries.Steady(air));
        _solver.Moisture.Fill(start);
        _solver.SetCelsius(Celsius);
        PinPlace[] places = [PinPlace.FreshCore, PinPlace.SplitFace, PinPlace.EndGrain];
        _views = [.. places.Select(place => new Pins(place)).Concat(readings.Select(reading => reading.Pins)).Select(pins => PinView.Of(grid, pins))];
    }

    internal Result<InnerProfile> Best()
    {
        var before = Look();
        var best = (Misfit: double.PositiveInfinity, Values: before, Days: 0.0);
        for (var (days, earlier) = (FirstDays, 0.0); days < LongestDays; (earlier, days) = (days, days * Growth))
        {
            _solver.AdvanceTo(days * 86400);
            var after = Look();
            var share = Nearest(before, after);
            double[] values = [.. before.Zip(after, (from, to) => from + share * (to - from))];
            if (Misfit(values) < best.Misfit) best = (Misfit(values), values, earlier + share * (days - earlier));
            if (Enumerable.Range(0, _readings.Count).All(i => after[Told + i] <= _readings[i].Moisture)) return ResultOf.Success(Profile(best.Values, best.Days, best.Misfit));
            before = after;
        }

        return ResultOf.Failure<InnerProfile>("reading", "It lies so near to what the air would dry the wood to in the end that it says nothing of the inside.", "Read a fresh core.");
    }

    /// <summary>Core, mean, shell, end, the three usual places, and the places that were read.</summary>
    private double[] Look()
    {
        var wood = _solver.Read(0);
        return [wood.Core, wood.Mean, wood.Shell, wood.End, .. _views.Select(view => view.Read(_solver.Moisture))];
    }

    /// <summary>Where between two looks the places read come nearest to the readings, in the least-squares sense, 0 to 1.</summary>
    private double Nearest(double[] before, double[] after)
    {
        double along = 0, length = 0;
        for (var i = 0; i < _readings.Count; i++)
        {
            var change = after[Told + i] - before[Told + i];
            along += change * (_readings[i].Moisture - before[Told + i]);
            length += change * change;
        }

        return length > 0 ? Math.Clamp(along / length, 0, 1) : 0;
    }

    private double Misfit(double[] values) => Math.Sqrt(_readings.Select((reading, i) => Math.Pow(values[Told + i] - reading.Moisture, 2)).Average());

    private static InnerProfile Profile(double[] v, double days, double misfit) => new(v[0], v[1], v[2], v[3], v[4], v[5], v[6], days, misfit);
}
