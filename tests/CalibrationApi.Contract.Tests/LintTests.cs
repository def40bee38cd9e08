using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The committed contract passes both linters, and the rules of our own do find what they are for.</summary>
public sealed partial class LintTests
{
    [Fact]
    public async Task Lint_OfTheCommittedContract_FindsNothing()
    {
        var lint = await NodeTools.ScriptAsync("lint");

        Assert.True(lint.ExitCode == 0, lint.Everything);
    }

    [Fact]
    public async Task Rules_OfTheRuleset_EachFindTheFaultTheyAreFor()
    {
        string[] own =
        [
            .. RuleName()
                .Matches(await File.ReadAllTextAsync(Path.Combine(NodeTools.Folder, ".spectral.yaml")))
                .Select(match => match.Groups[1].Value),
        ];
        var folder = Directory.CreateTempSubdirectory("calibration-lint-");
        try
        {
            var faulty = Path.Combine(folder.FullName, "faulty.json");
            await File.WriteAllTextAsync(faulty, FaultyContract);

            var lint = await NodeTools.RunAsync("spectral", "lint", faulty, "--ruleset", ".spectral.yaml", "--format", "json", "--quiet");

            var found = JsonNode.Parse(lint.Output)!.AsArray().Select(result => result!["code"]!.GetValue<string>()).ToHashSet();
            Assert.NotEmpty(own);
            Assert.Empty(own.Except(found));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // A rule is a key at the first level below "rules:"; one of others that is off finds nothing.
    [GeneratedRegex("^  ([a-z0-9-]+):(?! off)", RegexOptions.Multiline)]
    private static partial Regex RuleName();

    // One fault for each rule.
    private const string FaultyContract = """
        {
          "openapi": "3.1.2",
          "info": { "title": "Faulty", "version": "1.0.0", "description": "Every rule has a fault here." },
          "tags": [{ "name": "Declared" }],
          "paths": {
            "/no-example": {
              "post": {
                "operationId": "sendsWithoutExample",
                "tags": ["Declared"],
                "requestBody": { "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Sent" } } } },
                "responses": { "204": { "description": "Nothing to tell." } }
              }
            },
            "/Not_Kebab": {
              "post": {
                "operationId": "Not_camel",
                "tags": ["undeclared", "second"],
                "security": [{ "key": ["root"] }],
                "parameters": [{ "name": "Not_camel", "in": "query", "schema": { "type": "string" } }],
                "requestBody": { "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Sent" }, "example": { "text": 1 } } } },
                "responses": {
                  "200": { "description": "", "headers": { "ETag": { "schema": { "type": "string" } } }, "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Answered" } } } },
                  "500": { "description": "Failed.", "content": { "application/json": { "schema": { "type": "object", "description": "Not a problem." } } } }
                }
              }
            }
          },
          "components": {
            "schemas": {
              "Sent": {
                "type": "object",
                "properties": {
                  "Not_camel": { "type": "string" },
                  "text": { "type": "string", "example": 1 },
                  "list": { "type": "array", "items": { "type": "number" } },
                  "nothing": { "type": ["string", "null"] }
                }
              },
              "Answered": { "type": "object", "properties": {} },
              "Nothing": { "description": "Takes no value.", "type": "null", "allOf": [{ "$ref": "#/components/schemas/Answered" }] }
            }
          }
        }
        """;
}
