using Rickyard.Commands;
using Rickyard.Learn;
using Rickyard.Screens;
using Rickyard.Tests.Commands;

namespace Rickyard.Tests.Learn;

/// <summary>Runs <c>rickyard learn</c> in this process, on a screen of fixed width, with everything behind it invented.</summary>
internal static class TypedLearn
{
    public static Spoken Run(params string[] arguments) => Run(new InventedLearningEngine(), new InventedSource(), arguments);

    public static Spoken Run(ILearningEngine engine, params string[] arguments) => Run(engine, new InventedSource(), arguments);

    public static Spoken Run(IObservationSource source, params string[] arguments) => Run(new InventedLearningEngine(), source, arguments);

    private static Spoken Run(ILearningEngine engine, IObservationSource source, string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        var screen = new Screen(output, error, 100);
        var code = CommandLine.Run(["learn", .. arguments], screen, [LearnCommand.Build(screen, engine, source, new InventedMeter(), new InventedLearningPicture())]);
        return new(code, output.ToString(), error.ToString());
    }
}
