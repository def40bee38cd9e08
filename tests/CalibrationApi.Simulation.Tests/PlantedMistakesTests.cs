using CalibrationApi.Testing;

namespace CalibrationApi.Simulation.Tests;

public sealed class PlantedMistakesTests
{
    [Fact]
    public void Table_OfTheDemoData_IsTheOneThatIsMade()
    {
        var kept = File.ReadAllText(Repository.PathOf("demo-data", PlantedMistakes.File));

        Assert.True(
            kept == PlantedMistakes.Table(),
            "Run 'dotnet run --project tests/CalibrationApi.Simulation -- demo-data' and read the difference."
        );
        Assert.Equal(31, kept.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }
}
