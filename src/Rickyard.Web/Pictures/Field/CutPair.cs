using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>The two cuts of one day with the scales at which they are drawn, the same on every day so that pieces split again look smaller.</summary>
/// <param name="Snapshot">The day.</param>
/// <param name="Across">The cut across.</param>
/// <param name="AcrossScale">Its scale. [px m⁻¹]</param>
/// <param name="AcrossRoom">Room the largest cut across takes, bark and all. [px]</param>
/// <param name="Along">The cut along.</param>
/// <param name="AlongScale">Its scale. [px m⁻¹]</param>
/// <param name="AlongRoom">Room the largest cut along takes, bark and all. [px]</param>
internal sealed record CutPair(FieldSnapshot Snapshot, Cut Across, double AcrossScale, Room AcrossRoom, Cut Along, double AlongScale, Room AlongRoom)
{
    /// <summary>Cuts every snapshot, at the largest scales that fit the rooms.</summary>
    public static IReadOnlyList<CutPair> Of(IReadOnlyList<FieldSnapshot> snapshots, Room across, Room along)
    {
        Cut[] acrossCuts = [.. snapshots.Select(Cut.Across)], alongCuts = [.. snapshots.Select(Cut.Along)];
        double acrossScale = Scale(acrossCuts, across), alongScale = Scale(alongCuts, along);
        Room acrossRoom = Taken(acrossCuts, acrossScale), alongRoom = Taken(alongCuts, alongScale);
        return [.. snapshots.Select((snapshot, i) => new CutPair(snapshot, acrossCuts[i], acrossScale, acrossRoom, alongCuts[i], alongScale, alongRoom))];
    }

    private static double Scale(Cut[] cuts, Room room) => Math.Min(
        (room.Width - 2 * CutView.BarkWidth) / cuts.Max(cut => cut.Extent.Width), (room.Height - 2 * CutView.BarkWidth) / cuts.Max(cut => cut.Extent.Height));

    private static Room Taken(Cut[] cuts, double scale) => new(
        scale * cuts.Max(cut => cut.Extent.Width) + 2 * CutView.BarkWidth, scale * cuts.Max(cut => cut.Extent.Height) + 2 * CutView.BarkWidth);
}
