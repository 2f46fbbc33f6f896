namespace Rickyard.Core.Drying;

/// <summary>
/// Walks a stepper through time with steps as long as the error allows (physics.md, N4): the difference to the embedded first-order result,
/// as mean over the volume of the worst lane, is kept below <see cref="StepControl"/>'s tolerance. A mean and not a root mean square, because the few
/// thin cells along the pith follow every hour and matter to nobody.
/// </summary>
public sealed class AdaptiveDriver(LaneGrid grid, TransportLaw law, StepControl control)
{
    private double _proposal = control.FirstStep;

    /// <summary>The stepper being driven.</summary>
    public ImplicitStepper Stepper { get; } = new(grid, law);

    /// <summary>Time reached. [s]</summary>
    public double Time { get; private set; }

    /// <summary>Steps accepted so far.</summary>
    public int Accepted { get; private set; }

    /// <summary>Steps tried and thrown away so far.</summary>
    public int Rejected { get; private set; }

    /// <summary>Go back to a time, with a fresh first step; the caller sets the state.</summary>
    public void Restart(double time) => (Time, _proposal, Accepted, Rejected) = (time, control.FirstStep, 0, 0);

    /// <summary>Advance by one accepted step that does not pass <paramref name="until"/>; its outflow is in the stepper.</summary>
    /// <returns>The length of the step. [s]</returns>
    public double Advance(double until)
    {
        while (true)
        {
            var step = Fit(Math.Min(_proposal, control.LongestStep), until - Time);
            law.Begin(Time, step, Stepper.State);
            Stepper.Step(step);
            var error = Norm();
            if (error <= 1 || step <= control.ShortestStep)
            {
                Keep(step, error, until);
                return step;
            }

            Rejected++;
            _proposal = step * Factor(error, 0.1, 0.7);
        }
    }

    /// <summary>Take what is left in equal parts, so that no sliver of a step remains before a report time.</summary>
    private static double Fit(double step, double left) => step >= left ? left : step > left / 2 ? left / 2 : step;

    private static double Factor(double error, double low, double high) => double.IsNaN(error) ? low : Math.Clamp(0.9 / Math.Sqrt(error + 1e-12), low, high);

    private void Keep(double step, double error, double until)
    {
        Stepper.Accept();
        law.Accept();
        Accepted++;
        var reached = Time + step;
        Time = Math.Abs(until - reached) < 1e-9 * Math.Max(1, until) ? until : reached;
        var wanted = step * Factor(error, 0.3, 3);
        _proposal = step < _proposal * 0.99 ? Math.Max(wanted, Math.Min(_proposal, step * 10)) : wanted;
    }

    private double Norm()
    {
        double worst = 0;
        var lanes = grid.Lanes;
        for (var lane = 0; lane < lanes; lane++) worst = Math.Max(worst, NormOf(lane, lanes));
        return double.IsFinite(worst) ? worst : double.NaN;
    }

    private double NormOf(int lane, int lanes)
    {
        double[] error = Stepper.Error, state = Stepper.State, next = Stepper.Next;
        double sum = 0, volume = 0, lowest = 0;
        for (var i = lane; i < error.Length; i += lanes)
        {
            sum += Math.Abs(error[i]) / (control.Absolute + control.Relative * Math.Abs(state[i])) * grid.Volumes[i];
            volume += grid.Volumes[i];
            lowest = Math.Min(lowest, next[i]);
        }

        return lowest < 0 && !control.AllowNegative ? double.NaN : sum / volume;
    }
}
