namespace Rickyard.Web.Pictures.Surface;

internal static class DashLengths
{
    /// <summary>Lengths of line and gap; empty for an unbroken line. [px]</summary>
    public static double[] Of(Dash dash) => dash switch
    {
        Dash.Long => [9, 5],
        Dash.Short => [4, 3],
        Dash.Dots => [0.1, 4.5],
        _ => [],
    };
}
