using Rickyard.Web.Pictures;
using Xunit;

namespace Rickyard.Tests.Pictures;

/// <summary>The invented example of docs/reading-the-picture.md is what the program draws today.</summary>
public sealed class ExamplePictureTests
{
    [Theory]
    [InlineData("split-cut-open", false)]
    [InlineData("split-cut-open-phone-dark", true)]
    public void Example_in_the_guide_is_up_to_date(string name, bool phone)
    {
        var images = Path.Combine(Root(), "docs", "images");
        string approved = Path.Combine(images, $"{name}.svg"), received = Path.Combine(images, $"{name}.received.svg");
        var svg = RunPicture.Svg(Samples.Wedge, new(Dark: phone, Narrow: phone));
        File.Delete(received);
        if (File.Exists(approved) && File.ReadAllText(approved) == svg) return;
        Directory.CreateDirectory(images);
        File.WriteAllText(received, svg);
        Assert.Fail($"{name}.svg is not what is drawn now. Look at {name}.received.svg beside it; if it is right, let it take the other's place.");
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Rickyard.slnx"))) folder = folder.Parent ?? throw new DirectoryNotFoundException("Rickyard.slnx is in no folder above the tests.");
        return folder.FullName;
    }
}
