// How complete the contract is, as a share of what could be said. Every point is one yes-or-no question about one place of
// the document; README.md says which. Usage: node score.mjs [document]; exit code 1 below 100 %.
import { readFileSync } from "node:fs";

const file = process.argv.slice(2).find(argument => !argument.startsWith("--")) ?? "v1.json";
const document = JSON.parse(readFileSync(file, "utf8"));
const tally = new Map();
const missing = [];

function ask(measure, holds, place, advice) {
  const count = tally.get(measure) ?? { met: 0, all: 0 };
  tally.set(measure, { met: count.met + (holds ? 1 : 0), all: count.all + 1 });
  if (!holds) missing.push(`${place}: ${advice}`);
}

function resolve(node) {
  while (node?.$ref) node = node.$ref.slice(2).split("/").reduce((here, part) => here?.[part.replaceAll("~1", "/").replaceAll("~0", "~")], document);
  return node ?? {};
}

const said = text => typeof text === "string" && text.trim().length > 0;
const isSentence = text => said(text) && text.includes(" ") && text.trim().endsWith(".");
const hasExample = node => node?.example !== undefined || Object.keys(node?.examples ?? {}).length > 0;
const isWord = schema => schema.enum !== undefined || schema.const !== undefined || schema.type === "boolean";
const isNumber = schema => schema.type === "number" || schema.type === "integer";
const isText = schema => schema.type === "string";

// A text ends somewhere: by its words, its form or its length. Binary bodies are no texts.
const isBoundedText = schema => isWord(schema) || schema.format !== undefined || schema.pattern !== undefined || schema.maxLength !== undefined || schema.contentMediaType !== undefined;
const isBoundedNumber = schema => isWord(schema) || ((schema.minimum ?? schema.exclusiveMinimum) !== undefined && (schema.maximum ?? schema.exclusiveMaximum) !== undefined);

// Names of the schemas that a request leads to.
const sent = new Set();
function reach(node) {
  if (Array.isArray(node)) return node.forEach(reach);
  if (node === null || typeof node !== "object") return;
  const name = typeof node.$ref === "string" && node.$ref.startsWith("#/components/schemas/") ? node.$ref.split("/").pop() : null;
  if (name !== null && !sent.has(name)) {
    sent.add(name);
    reach(document.components?.schemas?.[name]);
  }
  Object.values(node).forEach(reach);
}

const methods = ["get", "put", "post", "delete", "patch"];
const operations = Object.entries(document.paths ?? {}).flatMap(([path, item]) =>
  methods.filter(method => item[method]).map(method => ({ path, method, operation: item[method] })));
operations.forEach(({ operation }) => reach(operation.requestBody));

for (const { path, method, operation } of operations) {
  const place = operation.operationId ?? `${method} ${path}`;
  ask("operations described", said(operation.summary) && said(operation.description) && operation.tags?.length === 1, place,
    "give the handler a <summary> and <remarks>, and the route one tag.");
  const responses = Object.entries(operation.responses ?? {});
  ask("operations with their errors", responses.some(([status]) => status.startsWith("4")) && responses.some(([status]) => status.startsWith("5")), place,
    "declare the problems of the route (Declared.cs, ProblemResult).");
  if (operation.requestBody) {
    const body = resolve(operation.requestBody);
    const media = Object.values(body.content ?? {});
    ask("bodies described", said(body.description), place, "describe the body: a comment on the handler's parameter or on its type.");
    ask("bodies with an example", media.some(hasExample), place, "add demo-data/<name>.json or openapi/examples/<operationId>.request.json.");
  }

  for (const parameter of (operation.parameters ?? []).map(resolve)) {
    const here = `${place} ${parameter.in} ${parameter.name}`;
    const schema = resolve(parameter.schema);
    ask("parameters described", said(parameter.description), here, "add a comment on the handler's parameter, or a sentence in QueryParameters.cs or TakenHeader.");
    ask("parameters bounded", isNumber(schema) ? isBoundedNumber(schema) : isWord(schema) || isBoundedText(schema), here, "say its words, form or length in QueryParameters.cs.");
    ask("parameters with an example or words", isWord(schema) || hasExample(parameter) || hasExample(schema), here, "add an example in QueryParameters.cs.");
  }

  for (const [status, reference] of responses) {
    const response = resolve(reference);
    const here = `${place} ${status}`;
    ask("statuses described", isSentence(response.description), here, "say in a sentence what it means: a <response> comment, or Statuses.cs.");
    const media = Object.values(response.content ?? {});
    if (media.length > 0)
      ask("answers with an example", media.some(hasExample), here, /^[45]/.test(status)
        ? "provoke it in ProblemCalls.cs and refresh the contract."
        : "refresh the contract: the answer is captured into openapi/examples/<operationId>.answer.json.");
    for (const [name, header] of Object.entries(response.headers ?? {}).map(([name, one]) => [name, resolve(one)])) {
      const schema = resolve(header.schema);
      ask("headers described", said(header.description), `${here} ${name}`, "describe it where the route declares it.");
      ask("headers bounded", isNumber(schema) ? isBoundedNumber(schema) : isBoundedText(schema), `${here} ${name}`, "say its form in AnswerHeader.cs.");
      ask("headers with an example", hasExample(header), `${here} ${name}`, "add an example in AnswerHeader.cs.");
    }
  }
}

for (const [name, schema] of Object.entries(document.components?.schemas ?? {})) {
  ask("schemas described", said(schema.description), name, "add a <summary> to the class.");
  for (const [member, value] of Object.entries(schema.properties ?? {})) {
    const place = `${name}.${member}`;
    const shape = resolve(value);
    ask("members described", said(value.description), place, "add a <summary> to the property: what it is, and in which unit if it is a plain number.");
    for (const one of [value, value.items].filter(Boolean)) {
      if (one.type === "array") ask("lists bounded", one.maxItems !== undefined, place, "add the rule Items to the validator; what is only answered is bounded by AnswerBounds.cs.");
      if (isText(one)) ask("texts bounded", isBoundedText(one), place, "add the rule Text or Word to the validator; what is only answered is bounded by AnswerBounds.cs.");
      if (isNumber(one)) ask("numbers with a format", said(one.format), place, "say how code has to hold it.");
    }
    // The value of a quantity has its range at each place that uses it, because the range holds in any unit.
    const isValueOfQuantity = member === "value" && schema.properties.unit !== undefined;
    if (!sent.has(name) || isValueOfQuantity) continue;
    const isQuantity = shape.properties?.value !== undefined && shape.properties?.unit !== undefined && isNumber(shape.properties.value);
    if (isNumber(value)) ask("numbers sent with a range", isBoundedNumber(value), place, "add the rule Number or Whole to the validator.");
    if (isQuantity && value.$ref && !value.$ref.endsWith("/TypedNumber")) ask("quantities sent with a range", /Range: /.test(value.description ?? ""), place, "add the rule Measured to the validator.");
    if ((isNumber(value) || isQuantity) && !(schema.required ?? []).includes(member))
      ask("defaults with their origin", /No default\.|[Dd]efault.*(judgement|published|common practice|from memory|that of the plan|the value in force|value adopted|of this test|outlets of the meter| none\.)/s.test(value.description ?? ""), place,
        "put [Default] on the property, or write 'Default …: …' with its origin: published source, common practice or judgement.");
  }
}

const rows = [...tally].map(([measure, { met, all }]) => [measure, met, all]);
const total = rows.reduce(([met, all], [, one, of]) => [met + one, all + of], [0, 0]);
// Never rounded up to a hundred.
const percent = (met, all) => `${(Math.floor((1000 * met) / all) / 10).toFixed(1)} %`;
const width = Math.max(...rows.map(([measure]) => measure.length));
for (const [measure, met, all] of [...rows, ["total", ...total]])
  console.log(`${measure.padEnd(width)}  ${String(met).padStart(5)} of ${String(all).padStart(5)}  ${percent(met, all).padStart(7)}`);
if (missing.length > 0) console.log(`\nMissing:\n${[...new Set(missing)].map(line => `  ${line}`).join("\n")}`);
process.exitCode = total[0] === total[1] ? 0 : 1;
