// Writes what the client knows of the contract: src/schema.d.ts, its types, and src/operations.ts, its table of operations.
// `npm run generate` writes them into src; another folder can be named, so that a test can compare.

import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import path from "node:path";
import openapiTS, { astToString } from "openapi-typescript";

const here = path.dirname(fileURLToPath(import.meta.url));
const contract = path.resolve(here, "../../../../openapi/v1.json");
const target = path.resolve(process.argv[2] ?? path.join(here, "../src"));
const heading = "// Made from openapi/v1.json by `npm run generate`. Never edit it by hand.\n\n";

const document = JSON.parse(await readFile(contract, "utf8"));
const types = await openapiTS(withoutExamples(document), {
  rootTypes: true,
  rootTypesNoSchemaPrefix: true,
  rootTypesKeepCasing: true,
  // A member with a default may be left out of a request.
  defaultNonNullable: false,
});
await writeFile(path.join(target, "schema.d.ts"), heading + astToString(types));
await writeFile(path.join(target, "operations.ts"), heading + operationsOf(document));

// Whole bodies are worth seeing in the contract, not in a tool tip.
function withoutExamples(value) {
  if (Array.isArray(value))
    return value.map(withoutExamples);
  if (typeof value !== "object" || value === null)
    return value;
  const isBody = "schema" in value && typeof value.example === "object";
  return Object.fromEntries(Object.entries(value)
    .filter(([name]) => !(isBody && name === "example"))
    .map(([name, member]) => [name, withoutExamples(member)]));
}

function operationsOf({ paths }) {
  const [calls, table] = [[], []];
  for (const [address, item] of Object.entries(paths)) {
    for (const method of ["get", "post", "put"]) {
      const operation = item[method];
      const asked = operation?.requestBody?.content;
      const answered = operation && Object.values(operation.responses).find(response => response.content?.["application/json"]);
      // What is not asked and answered in JSON, as a batch, has a method of its own.
      if (!answered || (asked && !asked["application/json"]))
        continue;
      const replacing = answered.headers?.ETag && (item.put ?? paths[`${address}/{id}`]?.put);
      const traits = [
        `method: "${method}"`,
        `path: "${address}"`,
        address.includes("{id}") && "takesId: true",
        asked && "takesBody: true",
        takes(operation, "Idempotency-Key") && "takesKey: true",
        takes(operation, "cursor") && "givesPages: true",
        answered.headers?.ETag && "givesTag: true",
        replacing && "givesEditable: true",
      ];
      const comment = [operation.summary, operation.description].filter(Boolean).join("\n\n").split("\n").map(line => `   * ${line}`.trimEnd()).join("\n");
      calls.push(`  /**\n${comment}\n   */\n  ${operation.operationId}: Call<"${[operation.operationId, replacing?.operationId].filter(Boolean).join('", "')}">;`);
      table.push(`  ${operation.operationId}: { ${traits.filter(Boolean).join(", ")} },`);
    }
  }
  return `import type { Call, Traits } from "./call.js";

/** The operations of the contract that ask and answer in JSON, each a method. */
export interface Calls {
${calls.join("\n")}
}

/** Where each operation is, and what it takes and gives. */
export const operationTable: Record<keyof Calls, Traits> = {
${table.join("\n")}
};
`;
}

function takes(operation, name) {
  // Parameters that operations share stand among the components.
  return operation.parameters?.some(parameter =>
    (parameter.$ref ? document.components.parameters[parameter.$ref.split("/").at(-1)] : parameter).name === name);
}
