using Rickyard.Web.Pictures.Colour;
using SkiaSharp;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>Records the drawing and then paints it as PNG, text in the embedded faces.</summary>
public sealed class SkiaDrawing : IDrawing, IDisposable
{
    private const float Tallest = 20_000;

    private readonly SKPictureRecorder _recorder = new();
    private readonly SKCanvas _canvas;

    /// <summary>A drawing of a given width; its height shows when it is done. [px]</summary>
    public SkiaDrawing(double width) => _canvas = _recorder.BeginRecording(new SKRect(0, 0, (float)width, Tallest));

    /// <inheritdoc/>
    public void Begin(string part)
    {
    }

    /// <inheritdoc/>
    public void End()
    {
    }

    /// <inheritdoc/>
    public void Fill(IEnumerable<IReadOnlyList<Point>> outlines, Rgb colour, double opacity = 1)
    {
        using var path = PathOf(outlines, closed: true);
        using var paint = Paint(colour, opacity);
        _canvas.DrawPath(path, paint);
    }

    /// <inheritdoc/>
    public void Line(IReadOnlyList<Point> points, Stroke stroke, bool closed = false)
    {
        using var path = PathOf([points], closed);
        using var paint = Paint(stroke.Colour);
        paint.IsStroke = true;
        paint.StrokeWidth = (float)stroke.Width;
        paint.StrokeCap = stroke.Blunt ? SKStrokeCap.Butt : SKStrokeCap.Round;
        paint.StrokeJoin = stroke.Blunt ? SKStrokeJoin.Miter : SKStrokeJoin.Round;
        var dash = DashLengths.Of(stroke.Dash);
        using var effect = dash.Length > 0 ? SKPathEffect.CreateDash([.. dash.Select(length => (float)length)], 0) : null;
        paint.PathEffect = effect;
        _canvas.DrawPath(path, paint);
    }

    /// <inheritdoc/>
    public void Write(string text, Point at, TextStyle style)
    {
        using var font = Typefaces.Font(style.Size, style.Bold);
        using var paint = Paint(style.Colour);
        _canvas.DrawText(text, (float)at.X, (float)at.Y, Align(style.Anchor), font, paint);
    }

    /// <summary>The picture as PNG; ends the drawing.</summary>
    /// <param name="width">[px]</param>
    /// <param name="height">[px]</param>
    /// <param name="page">Colour behind everything.</param>
    /// <param name="dotsPerPixel">Dots of the image for each pixel of the drawing.</param>
    public byte[] Png(double width, double height, Rgb page, double dotsPerPixel)
    {
        using var picture = _recorder.EndRecording();
        var size = new SKImageInfo((int)Math.Round(width * dotsPerPixel), (int)Math.Round(height * dotsPerPixel), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(size);
        surface.Canvas.Clear(Colour(page));
        surface.Canvas.Scale((float)dotsPerPixel);
        surface.Canvas.DrawPicture(picture);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => _recorder.Dispose();

    private static SKPath PathOf(IEnumerable<IReadOnlyList<Point>> outlines, bool closed)
    {
        using var path = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        foreach (var outline in outlines) path.AddPoly([.. outline.Select(point => new SKPoint((float)point.X, (float)point.Y))], closed);
        return path.Detach();
    }

    private static SKPaint Paint(Rgb colour, double opacity = 1) =>
        new() { IsAntialias = true, Color = Colour(colour).WithAlpha((byte)Math.Round(255 * opacity)) };

    private static SKColor Colour(Rgb colour) => new(colour.Red, colour.Green, colour.Blue);

    private static SKTextAlign Align(Anchor anchor) => anchor switch
    {
        Anchor.Middle => SKTextAlign.Center,
        Anchor.End => SKTextAlign.Right,
        _ => SKTextAlign.Left,
    };
}
