using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>The installed client against the running service after somebody made its first key.</summary>
[Collection(OnePackage.Name)]
public sealed class AdministrationTests(InstalledPackage package, RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task WorkspacesKeysAndAudit_OfARunningService_AreMadeChangedAndListed()
    {
        var key = await service.CommandAsync("keys", "create", "--name", "office", "--scopes", "calculate,read,write,admin,operator");

        var run = ClientSource.Succeeded(
            "The script fails.",
            await Command.RunAsync(package.Folder, "node", "administration.mjs", service.Address, key)
        );

        Assert.Equal(
            """{"made":[true,false,true,true],"may":[true,"403 scope-missing","403 scope-missing"],"none":"401 key-missing","read":["live",true],"rotated":[true,true],"revoked":["revoked","The tablet was lost.","401 key-revoked"],"keys":[["office"],["yard tablet"],["yard tablet"]],"inside":[[],["createKeyOfWorkspace"]],"workspaces":[2,true,1,2],"audit":[true],"refusals":["key-revoked","scope-missing"],"withoutKey":["key-missing"]}""",
            run.Output.Trim()
        );
    }
}
