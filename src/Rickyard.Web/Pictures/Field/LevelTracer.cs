using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>
/// The part of a mesh where its field is at or above a level. Each triangle the level cuts gives one directed piece of outline, the rim the rest;
/// pieces are joined by the numbers of the points they end in, so that outlines close exactly and neighbours share no seam.
/// </summary>
public sealed class LevelTracer
{
    private readonly FieldMesh _mesh;
    private readonly double _level;
    private readonly Dictionary<long, long> _next = [];

    private LevelTracer(FieldMesh mesh, double level)
    {
        (_mesh, _level) = (mesh, level);
        for (var first = 0; first < mesh.Triangles.Length; first += 3) CutTriangle(first);
        foreach (var (from, to) in mesh.Rim) FollowRim(from, to);
    }

    /// <summary>Outlines of the part at or above the level; whole outline of the mesh for a level below all values.</summary>
    public static IReadOnlyList<IReadOnlyList<Point>> Region(FieldMesh mesh, double level)
    {
        var tracer = new LevelTracer(mesh, level);
        return [.. tracer.Loops().Select(loop => (IReadOnlyList<Point>)[.. loop.Select(tracer.PointOf)])];
    }

    /// <summary>The lines inside the mesh along which the field is at the level.</summary>
    public static IReadOnlyList<IReadOnlyList<Point>> Contours(FieldMesh mesh, double level)
    {
        var tracer = new LevelTracer(mesh, level);
        return [.. tracer.Loops().SelectMany(tracer.PartsOnLevel)];
    }

    private bool Inside(int point) => _mesh.Values[point] >= _level;

    private void CutTriangle(int first)
    {
        long? leave = null, enter = null;
        for (var corner = 0; corner < 3; corner++)
        {
            int from = _mesh.Triangles[first + corner], to = _mesh.Triangles[first + (corner + 1) % 3];
            if (Inside(from) && !Inside(to)) leave = Crossing(from, to);
            if (!Inside(from) && Inside(to)) enter = Crossing(from, to);
        }

        if (leave is { } start && enter is { } end) _next[start] = end;
    }

    private void FollowRim(int from, int to)
    {
        if (!Inside(from) && !Inside(to)) return;
        var start = Inside(from) ? from : Crossing(from, to);
        _next[start] = Inside(to) ? to : Crossing(from, to);
    }

    // A point of the mesh keeps its number; a crossing of an edge is numbered above all of them.
    private long Crossing(int from, int to) => _mesh.Points.Length * (1L + Math.Min(from, to)) + Math.Max(from, to);

    private bool IsCrossing(long vertex) => vertex >= _mesh.Points.Length;

    private Point PointOf(long vertex)
    {
        if (!IsCrossing(vertex)) return _mesh.Points[vertex];
        var (low, high) = Math.DivRem(vertex - _mesh.Points.Length, _mesh.Points.Length);
        Point a = _mesh.Points[low], b = _mesh.Points[high];
        var share = (_level - _mesh.Values[low]) / (_mesh.Values[high] - _mesh.Values[low]);
        return new(a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));
    }

    private IEnumerable<List<long>> Loops()
    {
        while (_next.Count > 0)
        {
            var loop = new List<long>();
            var at = _next.Keys.First();
            while (_next.Remove(at, out var next))
            {
                loop.Add(at);
                at = next;
            }

            yield return loop;
        }
    }

    private IEnumerable<IReadOnlyList<Point>> PartsOnLevel(List<long> loop)
    {
        var start = loop.FindIndex(vertex => !IsCrossing(vertex));
        if (start < 0)
        {
            yield return [.. loop.Append(loop[0]).Select(PointOf)];
            yield break;
        }

        var part = new List<Point>();
        foreach (var vertex in loop.Skip(start).Concat(loop.Take(start + 1)))
        {
            if (IsCrossing(vertex)) part.Add(PointOf(vertex));
            if (IsCrossing(vertex) || part.Count == 0) continue;
            if (part.Count > 1) yield return part;
            part = [];
        }
    }
}
