using System.Reflection;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Reference.Codes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>The published contract and the reference page made from it.</summary>
internal static class ContractSetup
{
    private const string Description = """
        Computation behind calibrating machines that meter seed, fertilizer and other dry products: plan a catch, evaluate
        a catch test with its uncertainty, choose a metering element.

        A quantity is always `{ "value": 68.0, "unit": "kg/ha" }`; `GET /v1/units` lists every unit with its exact factor.
        Answers come in the units of the question unless `?units=metric` or `?units=us` asks otherwise, with fifteen
        significant digits; round for display only. Findings and headlines are sentences that can be shown as they are.

        Errors are problems (RFC 9457) with a stable code and a JSON pointer for each: 400 when the request cannot be read as
        this contract, 422 when it can but breaks a rule. The [page of codes](/reference/codes) tells the cause of every code
        of errors, findings and cautions, and what to do; `GET /v1/codes` gives the same as data. Within v1 members, codes and words are only ever added: ignore
        those you do not know. What is not HTTP, or has an address or headers that are too long, is answered 400, 408, 414 or 431
        without a body before it is looked at, and the connection is closed.

        Answers do not replace the machine's manual, the product label, local rules, or licensed or certified advice.
        """;

    // The contract is the same everywhere and names the usual address; the page calls the service that it came from.
    private const string TryOutHere = """
        (response) => {
          if (response.url.endsWith("/openapi/v1.json")) {
            const contract = JSON.parse(response.text);
            contract.servers = [{ url: location.origin, description: "This service." }];
            response.text = JSON.stringify(contract);
          }
          return response;
        }
        """;

    public static void AddContract(this IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.Configure<SwaggerOptions>(swagger =>
        {
            swagger.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            swagger.RouteTemplate = "openapi/{documentName}.json";
            swagger.SetCustomDocumentSerializer<ReadableVersion>();
        });
        services.AddSwaggerGen(swagger =>
        {
            swagger.SwaggerDoc(
                "v1",
                new OpenApiInfo
                {
                    Title = "Calibration API",
                    Version = EngineVersion.Current,
                    Description = Description,
                    Contact = new OpenApiContact { Name = "Maintainers of the Calibration API" },
                }
            );
            swagger.AddServer(
                new OpenApiServer { Url = "http://localhost:5000", Description = "The address after the first command of the README." }
            );
            swagger.IncludeXmlComments(() => DocComments.FileOf(Assembly.GetExecutingAssembly()));
            swagger.SupportNonNullableReferenceTypes();
            swagger.NonNullableReferenceTypesAsRequired();
            swagger.CustomOperationIds(api => api.ActionDescriptor.EndpointMetadata.OfType<IEndpointNameMetadata>().Single().EndpointName);
            swagger.MapType(typeof(AsKept<>), () => new OpenApiSchema());
            swagger.SchemaFilter<KeptSchemas>();
            swagger.MapType<ErrorCode>(() => new OpenApiSchema { Type = JsonSchemaType.String });
            swagger.SchemaFilter<QuantitySchemas>();
            swagger.SchemaFilter<DefaultSchemas>();
            swagger.SchemaFilter<RuleSchemas>();
            swagger.SchemaFilter<InheritedComments>();
            swagger.SchemaFilter<KnownWordSchemas>();
            swagger.SchemaFilter<SentCodes>();
            swagger.OperationFilter<TakenHeaders>();
            swagger.OperationFilter<QueryParameters>();
            swagger.OperationFilter<LimitAnswers>();
            swagger.OperationFilter<Statuses>();
            swagger.OperationFilter<SentCodes>();
            swagger.OperationFilter<AnswerHeaders>();
            swagger.OperationFilter<LimitHeaders>();
            swagger.OperationFilter<PageMedia>();
            swagger.OperationFilter<OperationDetails>();
            swagger.OperationFilter<Security>();
            swagger.DocumentFilter<Security>();
            swagger.DocumentFilter<BatchOperations>();
            swagger.DocumentFilter<NoNulls>();
            swagger.DocumentFilter<StandardFormats>();
            swagger.DocumentFilter<DocumentDetails>();
            swagger.DocumentFilter<AnswerBounds>();
            swagger.DocumentFilter<SharedProblems>();
            swagger.DocumentFilter<SharedParameters>();
        });
    }

    public static void MapContract(this WebApplication app)
    {
        app.MapFrontDoor();
        app.MapCodePage();
        app.MapGet("/openapi/v1.yaml", (ISwaggerProvider contract) =>
                Results.Text(ReadableVersion.Yaml(contract.GetSwagger("v1")), "application/yaml")
            )
            .IsPublic()
            .ExcludeFromDescription();
        app.MapGet("/reference/reference-page.js", () => Results.Text(Resource("reference-page.js"), "text/javascript; charset=utf-8"))
            .IsPublic()
            .ExcludeFromDescription();
        // Only where they are asked for: in the way of every request they would build their services each time.
        app.UseWhen(context => context.Request.Path.StartsWithSegments("/openapi"), contract => contract.UseSwagger());
        app.UseWhen(
            context => context.Request.Path.StartsWithSegments("/reference"),
            reference =>
                reference.UseSwaggerUI(page =>
                {
                    page.RoutePrefix = "reference";
                    page.DocumentTitle = "Calibration API: reference";
                    page.SwaggerEndpoint("/openapi/v1.json", "Calibration API v1");
                    page.DisplayOperationId();
                    page.DefaultModelsExpandDepth(0);
                    // Without the first line a phone shows the page of a desk, a third as large.
                    page.HeadContent =
                        $"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<style>{Resource("reference-page.css")}</style>\n";
                    page.InjectJavascript("./reference-page.js");
                    page.ConfigObject.Plugins = ["OperationFilter"];
                    page.EnableFilter();
                    page.EnableDeepLinking();
                    page.UseResponseInterceptor(TryOutHere.ReplaceLineEndings(" "));
                    // Nothing on the page asks an outside host.
                    page.ConfigObject.AdditionalItems["validatorUrl"] = "none";
                })
        );
    }

    private static string Resource(string name)
    {
        using var resource = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
        return resource.ReadToEnd();
    }
}
