using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Clients.Tests;

/// <summary>What the generated types send when nobody asks them to.</summary>
public sealed class ModelsTests
{
    // The generator sends defaults that a schema states. What was assumed would then look like what somebody stated.
    [Fact]
    public void Models_NewlyMade_SendNothing()
    {
        IParsable[] models =
        [
            .. typeof(CalibrationClient)
                .Assembly.GetExportedTypes()
                .Where(type => type.IsAssignableTo(typeof(IParsable)) && type.GetConstructor([]) is not null)
                .Select(type => (IParsable)Activator.CreateInstance(type)!),
        ];

        Assert.True(models.Length > 80);
        Assert.Empty(
            models
                .Where(model => Json.Of(model) != "{}")
                .Select(model =>
                    $"{model.GetType().Name} sends {Json.Of(model)}. Say defaults in descriptions of the contract, not as 'default'."
                )
        );
    }
}
