namespace Rickyard.Commands;

/// <summary>Whether members and seed can be run.</summary>
internal static class EnsembleCheck
{
    private const int MostMembers = 4096;

    public static void Ask(int members, int seed, OptionReading reading)
    {
        if (members is < 4 or > MostMembers || members % 4 != 0) reading.Wrong("--members", $"{members} members cannot be run.", $"Give a multiple of four from 4 to {MostMembers}.");
        if (seed < 0) reading.Wrong("--seed", $"{seed} is negative.", "Give 0 or more.");
    }
}
