namespace CalibrationApi.Tests;

/// <summary>Every path to which a record can be posted.</summary>
internal static class StoringKinds
{
    public static TheoryData<string> Evidence => ["catch-tests", "adoptions", "scale-checks"];

    public static TheoryData<string> Paths => [.. DescribedKinds.Paths, .. Evidence];

    /// <summary>A sound body for a path.</summary>
    public static Draft Draft(string path, Farm farm) =>
        path switch
        {
            "catch-tests" => farm.CatchTest,
            "adoptions" => farm.Adoption,
            "scale-checks" => farm.ScaleCheck,
            _ => DescribedKinds.Draft(path, farm),
        };

    /// <summary>A member that holds free text, and so makes another body without making a wrong one.</summary>
    public static string TextOf(string path) => path == "adoptions" ? "/reason" : "/note";
}
