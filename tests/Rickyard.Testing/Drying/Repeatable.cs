using CsCheck;

namespace Rickyard.Testing.Drying;

/// <summary>
/// Random cases that are the same on every run: for properties that hold to a time step's error, whose rare worst cases should not fail a build by chance. A wider hunt
/// changes the stream.
/// </summary>
public static class Repeatable
{
    private const ulong Seed = 20260401;

    /// <summary>The first cases of a stream.</summary>
    public static IEnumerable<T> Cases<T>(this Gen<T> gen, int count, uint stream = 1)
    {
        var random = new PCG(stream, Seed);
        for (var i = 0; i < count; i++) yield return gen.Generate(random, null, out _);
    }
}
