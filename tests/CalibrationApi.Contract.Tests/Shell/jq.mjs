// jq as npm has it, so that every machine filters with the same one.
// node jq.mjs <folder of package.json> [options of jq] <filter> [file]
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

const [folder, ...given] = process.argv.slice(2);
const jq = await createRequire(path.join(folder, "package.json"))("jq-web");
const options = given.filter(argument => argument.startsWith("-"));
const [filter, file] = given.filter(argument => !argument.startsWith("-"));
const output = jq.raw(readFileSync(file ?? 0, "utf8"), filter, options);
if (output !== "")
  process.stdout.write(`${output}\n`);
