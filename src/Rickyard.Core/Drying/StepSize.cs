namespace Rickyard.Core.Drying;

/// <summary>How long the next step is to be: grown and cut by the error of the last one, fitted to the time left (physics.md, N4).</summary>
internal sealed class StepSize(StepControl control)
{
    /// <summary>Shortest steps in a row, each beyond its error, after which a run is given up.</summary>
    private const int MostStuck = 1000;

    private double _proposal = control.FirstStep;
    private int _stuck;

    /// <summary>Begin again with a careful first step.</summary>
    internal void Restart() => _proposal = control.FirstStep;

    /// <summary>The step to try with so much time left: what is left is taken in equal parts, so that no sliver remains before a report time. [s]</summary>
    internal double Next(double left)
    {
        var step = Math.Min(_proposal, control.LongestStep);
        return step >= left ? left : step > left / 2 ? left / 2 : step;
    }

    /// <summary>Whether a step with such an error may stand.</summary>
    /// <exception cref="SolverStuckException">Not even the shortest step gives a possible state, or so many of them in a row did not help.</exception>
    internal bool Accepts(double step, double error)
    {
        _stuck = step > control.ShortestStep ? 0 : _stuck + 1;
        if (_stuck > 0 && (double.IsNaN(error) || _stuck > MostStuck)) throw new SolverStuckException(step, error);
        return error <= 1 || _stuck > 0;
    }

    /// <summary>After a step thrown away.</summary>
    internal void Cut(double step, double error) => _proposal = step * Factor(error, 0.1, 0.7);

    /// <summary>After a step taken.</summary>
    internal void Grow(double step, double error)
    {
        var wanted = step * Factor(error, 0.3, 3);
        _proposal = step < _proposal * 0.99 ? Math.Max(wanted, Math.Min(_proposal, step * 10)) : wanted;
    }

    private static double Factor(double error, double low, double high) => double.IsNaN(error) ? low : Math.Clamp(0.9 / Math.Sqrt(error + 1e-12), low, high);
}
