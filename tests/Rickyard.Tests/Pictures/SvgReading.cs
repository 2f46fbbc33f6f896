using System.Globalization;
using System.Xml.Linq;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Tests.Pictures;

/// <summary>An SVG picture read back: its texts with the room they may take, and the points of its parts.</summary>
internal sealed class SvgReading
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public SvgReading(string document)
    {
        Root = XDocument.Parse(document).Root!;
        Canvas = new(0, 0, Number(Root, "width"), Number(Root, "height"));
        Texts = [.. Root.Descendants(Svg + "text").Select(text => new KeyValuePair<string, Box>(text.Value, RoomOf(text)))];
    }

    public XElement Root { get; }

    public Box Canvas { get; }

    /// <summary>Each text and the box it needs in the widest of the common fonts.</summary>
    public IReadOnlyList<KeyValuePair<string, Box>> Texts { get; }

    public string Part(string name) => Root.Element(Svg + name)!.Value;

    /// <summary>Parts of that name, each as the points of each of its paths.</summary>
    public IReadOnlyList<IReadOnlyList<IReadOnlyList<Point>>> Groups(string name) =>
    [
        .. Root.Descendants(Svg + "g").Where(group => (string?)group.Attribute("class") == name)
            .Select(group => (IReadOnlyList<IReadOnlyList<Point>>)[.. group.Elements(Svg + "path").Select(path => Points((string)path.Attribute("d")!))]),
    ];

    public IEnumerable<Point> AllPoints() => Root.Descendants(Svg + "path").SelectMany(path => Points((string)path.Attribute("d")!));

    private static Box RoomOf(XElement text)
    {
        double size = Number(text, "font-size"), x = Number(text, "x"), y = Number(text, "y");
        var width = TextMeasure.Room(text.Value, size, (string?)text.Attribute("font-weight") == "700");
        var left = (string?)text.Attribute("text-anchor") switch { "middle" => x - width / 2, "end" => x - width, _ => x };
        return new(left, y - 0.75 * size, width, 0.95 * size);
    }

    private static IReadOnlyList<Point> Points(string path)
    {
        double[] numbers = [.. path.Split(['M', 'L', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
        return [.. numbers.Chunk(2).Select(pair => new Point(pair[0], pair[1]))];
    }

    private static double Number(XElement element, string attribute) => double.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);
}
