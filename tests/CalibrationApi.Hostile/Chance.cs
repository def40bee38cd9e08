namespace CalibrationApi.Hostile;

/// <summary>What chance picks.</summary>
internal static class Chance
{
    public static T One<T>(T[] of, Random random) => of[random.Next(of.Length)];
}
