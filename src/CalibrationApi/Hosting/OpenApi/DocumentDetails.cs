using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Describes the tags, closes what is sent and leaves open what is only answered.</summary>
internal sealed class DocumentDetails : IDocumentFilter
{
    /// <summary>The groups in the order in which a season meets them; what a year never asks comes last.</summary>
    public static readonly IReadOnlyList<string> Order =
    [
        "Machines",
        "Products",
        "Lots",
        "Scales",
        "Scale checks",
        "Containers",
        "Plans",
        "Seeding rates",
        "Product rates",
        "Seed-row limits",
        "New lots",
        "Bulk densities",
        "Element fits",
        "Meter speeds",
        "Distance sensors",
        "Drive wheel turns",
        "Catch plans",
        "Catch tests",
        "Values in force",
        "Volume checks",
        "Stand counts",
        "Stand risks",
        "History",
        "Changes",
        "Units",
        "Codes",
        "Workspaces",
        "Keys",
        "Audit",
    ];

    private static readonly Dictionary<string, string> Tags = new()
    {
        ["Machines"] = "Seeding machines with their tanks, meters, metering elements and what a test disturbs on them.",
        ["Products"] = "What meters put down.",
        ["Lots"] = "Deliveries and seed lots of a product, with what changes from lot to lot.",
        ["Scales"] = "The scales that weigh catches.",
        ["Containers"] = "The containers that catches fall into.",
        ["Plans"] = "Which meter puts down which product at which rate on a field.",
        ["Scale checks"] = "Checks of scales against known masses; the error found is corrected in later tests.",
        ["Values in force"] = "What was typed into the controllers, by whom, why and on what evidence.",
        ["History"] = "Everything that happened, in the order of time.",
        ["Changes"] = "Every stored change in the order in which it was stored, for whoever must miss none.",
        ["Workspaces"] = "What one farm, dealer or customer keeps, apart from all others; for whoever runs the installation.",
        ["Keys"] = "Who may do what in a workspace.",
        ["Audit"] = "What was done with which key, and what was refused.",
        ["Codes"] = "Every code of errors, findings and cautions, with its cause and what to do.",
        ["Units"] = "The closed list of units with their exact factors.",
    };

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var operations = SchemaTree.Operations(swaggerDoc).ToArray();
        var said = context
            .ApiDescriptions.SelectMany(description => description.ActionDescriptor.EndpointMetadata.OfType<TagSentence>())
            .ToDictionary(sentence => sentence.Tag, sentence => sentence.Says);
        var used = operations
            .SelectMany(operation => operation.Tags ?? new HashSet<OpenApiTagReference>())
            .Select(tag => tag.Name!)
            .Distinct()
            .OrderBy(name => Order.Contains(name) ? Order.ToList().IndexOf(name) : Order.Count);
        swaggerDoc.Tags = new HashSet<OpenApiTag>(
            used.Select(name => new OpenApiTag { Name = name, Description = said.GetValueOrDefault(name) ?? Tags.GetValueOrDefault(name) })
        );

        // The service refuses members that it does not know, so whatever can be sent is closed, even where it is answered
        // too. A client must accept members that it does not know, so whatever is only answered is open.
        var sent = SchemaTree.Reach(operations.SelectMany(SchemaTree.Sent), swaggerDoc);
        foreach (var (name, schema) in swaggerDoc.Components?.Schemas ?? new Dictionary<string, IOpenApiSchema>())
        {
            if (schema is OpenApiSchema { Properties: not null } concrete)
                concrete.AdditionalPropertiesAllowed = !sent.Contains(name);
        }
    }
}
