namespace CalibrationApi.Tests;

/// <summary>The six kinds of things that are described.</summary>
internal static class DescribedKinds
{
    public static TheoryData<string> Paths => ["machines", "products", "lots", "scales", "containers", "plans"];

    /// <summary>A sound description of one kind.</summary>
    public static Draft Draft(string path, Farm farm) =>
        path switch
        {
            "machines" => Farm.MachineDraft,
            "products" => Farm.ProductDraft,
            "lots" => Farm.LotDraft(farm.Product),
            "scales" => Farm.ScaleDraft,
            "containers" => Farm.ContainerDraft,
            "plans" => farm.PlanDraft,
            _ => throw new ArgumentOutOfRangeException(nameof(path)),
        };
}
