namespace Rickyard.Core.Drying;

/// <summary>Walks a stepper through time with steps as long as the error allows (physics.md, N4): <see cref="StepError"/> is kept below one.</summary>
public sealed class AdaptiveDriver(LaneGrid grid, TransportLaw law, StepControl control)
{
    private readonly StepSize _size = new(control);

    /// <summary>The stepper being driven.</summary>
    public ImplicitStepper Stepper { get; } = new(grid, law);

    /// <summary>Time reached. [s]</summary>
    public double Time { get; private set; }

    /// <summary>Steps accepted so far.</summary>
    public int Accepted { get; private set; }

    /// <summary>Steps tried and thrown away so far.</summary>
    public int Rejected { get; private set; }

    /// <summary>Go back to a time, with a fresh first step; the caller sets the state.</summary>
    public void Restart(double time)
    {
        (Time, Accepted, Rejected) = (time, 0, 0);
        _size.Restart();
    }

    /// <summary>Advance by one accepted step that does not pass <paramref name="until"/>; its outflow is in the stepper.</summary>
    /// <returns>The length of the step. [s]</returns>
    public double Advance(double until)
    {
        while (true)
        {
            var step = _size.Next(until - Time);
            law.Begin(Time, step, Stepper.State);
            Stepper.Step(step);
            var error = StepError.Of(Stepper, grid, control);
            if (_size.Accepts(step, error))
            {
                Keep(step, error, until);
                return step;
            }

            Rejected++;
            _size.Cut(step, error);
        }
    }

    private void Keep(double step, double error, double until)
    {
        Stepper.Accept();
        law.Accept();
        Accepted++;
        var reached = Time + step;
        Time = Math.Abs(until - reached) < 1e-9 * Math.Max(1, until) ? until : reached;
        _size.Grow(step, error);
    }
}
