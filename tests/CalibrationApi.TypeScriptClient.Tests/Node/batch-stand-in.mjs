// Answers batches by asking the service for each line, until the service answers them itself; passes everything else on.
// node batch-stand-in.mjs <address of the service>; prints its own address.
import { createServer } from "node:http";
import { createInterface } from "node:readline";
import { Readable } from "node:stream";

const service = process.argv[2];
const batch = /^(\/v1\/calculations\/[a-z-]+)\/batch(\?.*)?$/;

const server = createServer(async (request, response) => {
  const [, path, query = ""] = batch.exec(request.url) ?? [];
  // Answered by the service: the preflight of a browser's batch is that of any other POST.
  if (!path || request.method !== "POST")
    return pass(request, response);
  const allowed = { "Access-Control-Allow-Origin": request.headers.origin ?? "*" };
  response.writeHead(200, { "Content-Type": "application/x-ndjson; charset=utf-8", ...allowed });
  let line = 0;
  for await (const question of createInterface({ input: request })) {
    const answer = await fetch(service + path + query, { method: "POST", headers: { "Content-Type": "application/json" }, body: question });
    response.write(`${JSON.stringify({ line: ++line, [answer.ok ? "result" : "problem"]: await answer.json() })}\n`);
  }
  response.end();
});

async function pass(request, response) {
  const { host, connection, ...headers } = request.headers;
  const hasBody = ["POST", "PUT"].includes(request.method);
  const answer = await fetch(service + request.url, { method: request.method, headers, ...(hasBody && { body: Readable.toWeb(request), duplex: "half" }) });
  response.writeHead(answer.status, Object.fromEntries(answer.headers));
  if (answer.body)
    Readable.fromWeb(answer.body).pipe(response);
  else
    response.end();
}

server.listen(0, "127.0.0.1", () => console.log(`http://127.0.0.1:${server.address().port}`));
