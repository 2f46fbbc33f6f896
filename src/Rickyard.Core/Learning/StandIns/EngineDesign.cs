using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>
/// Runs the engine for members spread evenly over the unknowns (Latin hypercube), wider than the prior so that a lot which is unlike its prior is still inside.
/// Four members side by side share a rack and a weather, as the solver has it.
/// </summary>
internal sealed class EngineDesign(DryingCase drying, CaseAir air, LotUnknowns unknowns, OutputTable outputs, int seed)
{
    /// <summary>Standard deviation of the design over that of the prior: the outermost of 128 members then lie at three standard deviations of the prior.</summary>
    private const double Reach = 1.25;

    /// <summary>Least moisture whose logarithm is taken. [kg kg⁻¹]</summary>
    private const double LeastMoisture = 1e-4;

    private readonly double[] _days = outputs.Days();

    /// <summary>Run them all.</summary>
    /// <param name="members">A multiple of four.</param>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal EngineSample Run(int members, IProgress<double>? progress, CancellationToken cancellation)
    {
        var numbers = Numbers(members);
        var answers = outputs.All.Select(_ => new double[members]).ToArray();
        var (groups, done) = (members / LaneGrid.FullLanes, 0);
        var run = new GroupRun(drying, air, _days, cancellation);
        Parallel.For(0, groups, new ParallelOptions { CancellationToken = cancellation }, group =>
        {
            Group(run, numbers, answers, group);
            progress?.Report(Interlocked.Increment(ref done) / (double)groups);
        });
        return new(numbers, answers, LaneGrid.FullLanes);
    }

    /// <summary>Run one group of given members in one weather; used for the design and for lots made up to test the learning.</summary>
    /// <param name="run">The case's run, over <see cref="OutputTable.Days"/>.</param>
    /// <param name="numbers">Numbers of its one or four members.</param>
    /// <param name="weather">Number of its weather.</param>
    /// <returns>Outputs by output and member; not yet logarithms.</returns>
    internal double[][] Answers(GroupRun run, double[][] numbers, int weather)
    {
        var answers = outputs.All.Select(_ => new double[numbers.Length]).ToArray();
        var byDay = outputs.All.Select((output, number) => (output, number)).ToLookup(pair => pair.output.Day);
        var sensors = new GroupSensors();
        MemberWood[] members = [.. numbers.Select(one => MemberWood.Of(drying, unknowns.Member(one)))];
        run.Run(members, new(weather, unknowns.Rack(numbers[0])), new HashSet<string>(), (_, day, solver, grids) =>
        {
            for (var lane = 0; lane < numbers.Length; lane++)
            {
                var reading = solver.Read(lane);
                foreach (var (output, number) in byDay[day]) answers[number][lane] = sensors.Read(output.Sensor, solver, grids[lane], lane, reading);
            }
        });
        return answers;
    }

    private void Group(GroupRun run, double[][] numbers, double[][] answers, int group)
    {
        var first = group * LaneGrid.FullLanes;
        var values = Answers(run, numbers[first..(first + LaneGrid.FullLanes)], GroupConditions.WeatherNumber(group, seed));
        for (var output = 0; output < values.Length; output++)
        for (var lane = 0; lane < LaneGrid.FullLanes; lane++)
            answers[output][first + lane] = Math.Log(Math.Max(values[output][lane], LeastMoisture));
    }

    private double[][] Numbers(int members)
    {
        var numbers = Enumerable.Range(0, members).Select(_ => new double[unknowns.Count]).ToArray();
        for (var k = 0; k < unknowns.Count; k++)
        {
            var share = LotUnknowns.IsOfRack(unknowns.Active[k]) ? LaneGrid.FullLanes : 1;
            var column = LatinHypercube.Column(members / share, seed, (int)unknowns.Active[k]);
            for (var member = 0; member < members; member++) numbers[member][k] = Reach * column[member / share];
        }

        return numbers;
    }
}
