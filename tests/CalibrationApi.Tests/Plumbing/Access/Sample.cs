using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>A request that an operation answers with success when the key may.</summary>
/// <param name="Path">Its path, with the id of a record of the workspace.</param>
/// <param name="Body">What is sent; names every record that such a body can name.</param>
/// <param name="Media">Media type of that.</param>
internal sealed record Sample(string Path, JsonNode? Body = null, string Media = "application/json")
{
    private const string Calculations = "/v1/calculations/";
    private const string Batch = "/batch";
    private const string Later = "2026-06-01T00:00:00Z";

    // One row for each operation; calculations have theirs in demo-data.
    private static readonly Dictionary<string, Func<Site, Task<Sample>>> Rows = new(
        [
            Row("listUnits", _ => new("/v1/units")),
            Row("listCodes", _ => new("/v1/codes")),
            .. Described("Machine", "machines", _ => Farm.MachineDraft, site => site.Farm.Machine),
            .. Described("Product", "products", _ => Farm.ProductDraft, site => site.Farm.Product),
            .. Described("Lot", "lots", site => Farm.LotDraft(site.Farm.Product), site => site.Farm.Lot),
            .. Described("Scale", "scales", _ => Farm.ScaleDraft, site => site.Farm.Scale),
            .. Described("Container", "containers", _ => Farm.ContainerDraft, site => site.Farm.Container),
            .. Described("Plan", "plans", site => site.Plan, site => site.Ids["plans"]),
            Row("planCatchOfPlan", site => new($"/v1/plans/{site.Ids["plans"]}/catch-plan")),
            Row("setUpOfPlan", site => new($"/v1/plans/{site.Ids["plans"]}/set-up")),
            Row("listValuesInForce", site => new($"/v1/machines/{site.Farm.Machine}/values-in-force")),
            Row("listHistory", _ => new("/v1/history")),
            Row("listChanges", _ => new("/v1/changes")),
            Row("listCatchTests", _ => new("/v1/catch-tests")),
            Row("listAdoptions", _ => new("/v1/adoptions")),
            Row("listScaleChecks", _ => new("/v1/scale-checks")),
            Row("getCatchTest", site => new($"/v1/catch-tests/{site.Ids["catch-tests"]}")),
            Row("recomputeCatchTest", site => new($"/v1/catch-tests/{site.Ids["catch-tests"]}/recomputations")),
            Row("getAdoption", site => new($"/v1/adoptions/{site.Ids["adoptions"]}")),
            Row("getScaleCheck", site => new($"/v1/scale-checks/{site.Ids["scale-checks"]}")),
            Row("recordCatchTest", async site =>
                new(
                    "/v1/catch-tests",
                    site.Farm.CatchTest.With("/plan", site.Ids["plans"])
                        .With("/container", site.Farm.Container)
                        .With("/supersedes", Farm.Supersedes(await site.TestAsync()))
                        .Body
                )
            ),
            Row("adoptValue", async site =>
                new(
                    "/v1/adoptions",
                    site.Farm.Adoption.With("/test", site.Ids["catch-tests"])
                        .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                        .With("/supersedes", Farm.Supersedes(await site.AdoptionAsync()))
                        .Body
                )
            ),
            Row("recordScaleCheck", async site =>
                new("/v1/scale-checks", site.Farm.ScaleCheck.With("/supersedes", Farm.Supersedes(await site.ScaleCheckAsync())).Body)
            ),
            Row("createKey", _ => new("/v1/keys", NewKey())),
            Row("listKeys", _ => new("/v1/keys")),
            Row("getKey", site => new($"/v1/keys/{site.Key(Scope.Read).Id}")),
            Row("rotateKey", site => new($"/v1/keys/{site.Key(Scope.Read).Id}/rotations", new JsonObject { ["until"] = Later })),
            Row("revokeKey", site => new($"/v1/keys/{site.Key(Scope.Read).Id}/revocations", new JsonObject { ["reason"] = "lost" })),
            Row("listAudit", _ => new("/v1/audit")),
            Row("listRefusals", _ => new("/v1/audit/refusals")),
            Row("listRefusalsWithoutKey", _ => new("/v1/audit/refusals/without-key")),
            Row("createWorkspace", _ => new("/v1/workspaces", new JsonObject { ["name"] = "third farm" })),
            Row("listWorkspaces", _ => new("/v1/workspaces")),
            Row("getWorkspace", site => new($"/v1/workspaces/{site.Workspace}")),
            Row("replaceWorkspace", site => new($"/v1/workspaces/{site.Workspace}", new JsonObject { ["name"] = "renamed" })),
            Row("createKeyOfWorkspace", site => new($"/v1/workspaces/{site.Workspace}/keys", NewKey())),
        ],
        StringComparer.Ordinal
    );

    /// <summary>Operations that have a row here.</summary>
    public static IEnumerable<string> Operations => Rows.Keys;

    /// <summary>The request of an operation; null where it has none.</summary>
    /// <param name="operation">Name of the operation.</param>
    /// <param name="path">Path of its route.</param>
    /// <param name="site">The workspace.</param>
    public static async Task<Sample?> OfAsync(string operation, string path, Site site)
    {
        if (Rows.TryGetValue(operation, out var row))
            return await row(site);
        if (!path.StartsWith(Calculations, StringComparison.Ordinal))
            return null;
        var isBatch = path.EndsWith(Batch, StringComparison.Ordinal);
        var file = System.IO.Path.Combine(
            AppContext.BaseDirectory,
            "demo-data",
            path[Calculations.Length..].Replace(Batch, "", StringComparison.Ordinal) + ".json"
        );
        return File.Exists(file)
            ? new Sample(path, Draft.Of(await File.ReadAllTextAsync(file)).Body, isBatch ? "application/x-ndjson" : "application/json")
            : null;
    }

    private static JsonObject NewKey() =>
        new()
        {
            ["name"] = "another",
            ["scopes"] = new JsonArray("read"),
            ["expiresAt"] = Later,
        };

    private static KeyValuePair<string, Func<Site, Task<Sample>>> Row(string operation, Func<Site, Sample> sample) =>
        Row(operation, site => Task.FromResult(sample(site)));

    private static KeyValuePair<string, Func<Site, Task<Sample>>> Row(string operation, Func<Site, Task<Sample>> sample) =>
        KeyValuePair.Create(operation, sample);

    private static KeyValuePair<string, Func<Site, Task<Sample>>>[] Described(
        string name,
        string path,
        Func<Site, Draft> draft,
        Func<Site, string> id
    ) =>
        [
            Row($"create{name}", site => new($"/v1/{path}", draft(site).Body)),
            Row($"list{name}s", _ => new($"/v1/{path}")),
            Row($"get{name}", site => new($"/v1/{path}/{id(site)}")),
            Row($"replace{name}", site => new($"/v1/{path}/{id(site)}", draft(site).Body)),
        ];
}
