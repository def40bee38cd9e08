using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>A batch of the installed client against the running service.</summary>
[Collection(OneInstallation.Name)]
public sealed class BatchTests(InstalledClient client, RunningService service) : IClassFixture<RunningService>
{
    [PythonFact]
    public async Task Batch_OfManyQuestionsAndOfQuestionsThatWaitForAnswers_IsAnsweredInOrder()
    {
        var run = ClientSource.Succeeded("The script fails.", await client.RunAsync("batches.py", service.Address));

        Assert.Equal("""{"list":[3000,true],"made":[1,2,3,4,5],"refused":[true,false,true]}""", run.Output.Trim());
    }
}
