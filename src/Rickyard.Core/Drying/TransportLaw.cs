using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// The physics behind a stepper: how the conserved quantity moves between cells and through outer faces. Works on whole interleaved
/// arrays, so that the cost of calling it does not count and each law can vectorise its own loops.
/// </summary>
public abstract class TransportLaw
{
    /// <summary>Prepare everything that stays fixed during one step: the air averaged over it and what follows from that.</summary>
    /// <param name="time">Start of the step. [s]</param>
    /// <param name="step">Length of the step. [s]</param>
    /// <param name="state">Cell values at its start, interleaved.</param>
    public abstract void Begin(double time, double step, ReadOnlySpan<double> state);

    /// <summary>Told that the step begun last was accepted.</summary>
    public virtual void Accept()
    {
    }

    /// <summary>
    /// Least and most to which the surroundings of a member bring the cells behind its outer faces in the step begun last. No face gives off or takes in what
    /// would carry a cell beyond.
    /// </summary>
    /// <param name="lane">Number of the member.</param>
    public virtual (double Least, double Most) Reach(int lane) => (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Whatever is needed once per state before fluxes are asked for.</summary>
    public abstract void Evaluate(ReadOnlySpan<double> state);

    /// <summary>
    /// How each outer face answers when what it gives off fills the surroundings: how much less leaves per unit of their own quantity, such as the vapour
    /// pressure beside the wood. [quantity m³ s⁻¹ per unit]
    /// </summary>
    /// <param name="answers">Written, one for each outer face.</param>
    /// <returns>Whether the surroundings fill at all; where not, nothing is written.</returns>
    public virtual bool Answers(Span<double> answers) => false;

    /// <summary>By how much the surroundings of a member have filled, over a step, beyond what they were taken to be. [unit]</summary>
    /// <param name="lane">Number of the member.</param>
    /// <param name="step">[s]</param>
    /// <param name="given">What its faces gave off. [quantity m³]</param>
    /// <param name="keeping">How much less they would have given off per unit. [quantity m³ per unit]</param>
    public virtual double Filled(int lane, double step, double given, double keeping) => 0;

    /// <summary>Flux into each cell from its next neighbour along an axis. [quantity m³ s⁻¹]</summary>
    public abstract void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux);

    /// <summary>Derivative of that flux: by the neighbour's value (<paramref name="next"/>) and, with its sign turned, by the cell's own (<paramref name="own"/>). [m³ s⁻¹]</summary>
    public abstract void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own);

    /// <summary>Flux out through each outer face and its derivative by the value of the cell behind it. [quantity m³ s⁻¹], [m³ s⁻¹]</summary>
    public abstract void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope);
}
