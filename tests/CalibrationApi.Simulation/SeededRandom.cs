using System.Buffers.Binary;
using System.Numerics;
using System.Security.Cryptography;
using System.Text;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Simulation;

/// <summary>
/// Random numbers that are the same for the same seed on any machine, in as many independent streams as there are trials:
/// trial 17 is the same whichever thread runs it.
/// </summary>
/// <remarks>
/// xoshiro256** 1.0, its state filled by SplitMix64, as its authors recommend (Blackman and Vigna, Scrambled linear
/// pseudorandom number generators, ACM TOMS 47 (2021); from memory, checked in SeededRandomTests against the
/// general-purpose library). The library's own generator takes a seed of 32 bits only, too few for streams.
/// </remarks>
public sealed class SeededRandom : Random
{
    private const double UnitOf53Bits = 1.0 / (1UL << 53);

    private ulong s0,
        s1,
        s2,
        s3;

    private SeededRandom(ulong seed)
    {
        s0 = Next(ref seed);
        s1 = Next(ref seed);
        s2 = Next(ref seed);
        s3 = Next(ref seed);
    }

    /// <summary>Starts from the four words of state themselves.</summary>
    public SeededRandom(ulong first, ulong second, ulong third, ulong fourth) => (s0, s1, s2, s3) = (first, second, third, fourth);

    /// <summary>One stream of a seed.</summary>
    public static SeededRandom Of(ulong seed, long stream)
    {
        var ofTheStream = (ulong)stream;
        return new SeededRandom(seed ^ Next(ref ofTheStream));
    }

    /// <summary>A seed for each of many studies that share one.</summary>
    public static ulong SeedFor(ulong seed, string study) =>
        seed ^ BinaryPrimitives.ReadUInt64LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes(study)));

    /// <summary>The next 64 bits.</summary>
    public ulong NextBits()
    {
        var result = BitOperations.RotateLeft(s1 * 5, 7) * 9;
        var t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = BitOperations.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>Uniform in [0, 1), 53 bits.</summary>
    public override double NextDouble() => (NextBits() >> 11) * UnitOf53Bits;

    /// <summary>Uniform between two limits.</summary>
    public double Between(double lower, double upper) => lower + (upper - lower) * NextDouble();

    /// <summary>Normal with mean 0.</summary>
    public double Normal(double standardDeviation) =>
        standardDeviation > 0 ? MathNet.Numerics.Distributions.Normal.Sample(this, 0, standardDeviation) : 0;

    /// <summary>A standard deviation drawn from its prior: sigma^2 = nu0 s0^2 / chi^2(nu0).</summary>
    public double StandardDeviation(double s0, double nu0) => s0 * Math.Sqrt(nu0 / ChiSquared.Sample(this, nu0));

    /// <summary>Student's t.</summary>
    public double Student(double degreesOfFreedom, double scale) => StudentT.Sample(this, 0, scale, degreesOfFreedom);

    /// <inheritdoc/>
    protected override double Sample() => NextDouble();

    /// <inheritdoc/>
    public override int Next() => (int)(NextDouble() * int.MaxValue);

    /// <inheritdoc/>
    public override int Next(int maxValue) => (int)(NextDouble() * maxValue);

    /// <inheritdoc/>
    public override int Next(int minValue, int maxValue) => (int)(minValue + NextDouble() * ((double)maxValue - minValue));

    // SplitMix64.
    private static ulong Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
