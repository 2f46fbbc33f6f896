namespace Rickyard.Core.Drying;

/// <summary>
/// The error of a step over what <see cref="StepControl"/> allows: the difference to the embedded first-order result, as mean over the volume of the worst lane.
/// A mean and not a root mean square, because the few thin cells along the pith follow every hour and matter to nobody.
/// </summary>
internal static class StepError
{
    /// <summary>1 at what is allowed; not a number where a value became impossible.</summary>
    internal static double Of(ImplicitStepper stepper, LaneGrid grid, StepControl control)
    {
        double worst = 0;
        for (var lane = 0; lane < grid.Lanes; lane++) worst = Math.Max(worst, OfLane(stepper, grid, control, lane));
        return double.IsFinite(worst) ? worst : double.NaN;
    }

    private static double OfLane(ImplicitStepper stepper, LaneGrid grid, StepControl control, int lane)
    {
        double[] error = stepper.Error, state = stepper.State, next = stepper.Next;
        double sum = 0, volume = 0, lowest = 0;
        for (var i = lane; i < error.Length; i += grid.Lanes)
        {
            sum += Math.Abs(error[i]) / (control.Absolute + control.Relative * Math.Abs(state[i])) * grid.Volumes[i];
            volume += grid.Volumes[i];
            lowest = Math.Min(lowest, next[i]);
        }

        return lowest < 0 && !control.AllowNegative ? double.NaN : sum / volume;
    }
}
