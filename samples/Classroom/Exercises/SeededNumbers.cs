using System.Collections.Generic;

namespace Classroom.Exercises;

/// <summary>Numbers that look random and are the same for the same seed, on every machine and in every version of the framework.</summary>
/// <remarks>SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014; its constants are from memory.</remarks>
internal sealed class SeededNumbers(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A whole number from <paramref name="low"/> to <paramref name="high"/>, both included.</summary>
    public int Between(int low, int high) => low + (int)(Next() % (ulong)(high - low + 1));

    /// <summary>One of several.</summary>
    public T OneOf<T>(IReadOnlyList<T> items) => items[Between(0, items.Count - 1)];

    private ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
