namespace Rickyard.Core.Wood;

/// <summary>How the vessels lie and whether they are open: what decides how free water moves.</summary>
public enum Anatomy
{
    /// <summary>No vessels: tracheids with pits.</summary>
    Softwood,

    /// <summary>Vessels of like size all through the ring, mostly open in sapwood: maple, birch, beech.</summary>
    DiffusePorous,

    /// <summary>Between ring- and diffuse-porous: hickory, walnut, cherry.</summary>
    SemiRingPorous,

    /// <summary>Large early vessels that stay open in heartwood: the red oaks, ash, elm.</summary>
    RingPorousOpen,

    /// <summary>Large early vessels closed by tyloses or gum in heartwood: the white oaks, black locust, Osage-orange.</summary>
    RingPorousBlocked,
}
