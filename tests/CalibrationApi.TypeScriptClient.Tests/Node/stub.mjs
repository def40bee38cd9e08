// A service that answers what a test tells it to, and remembers what it was asked.
import { createServer } from "node:http";
import { once } from "node:events";
import { CalibrationClient } from "calibration-api-client";

/** @param answers One function for each request to come, in order; the last one answers all that follow. */
export async function stub(...answers) {
  const asked = [];
  const server = createServer(async (request, response) => {
    const answer = answers[Math.min(asked.length, answers.length - 1)];
    const entry = { method: request.method, url: request.url, headers: request.headers, body: "" };
    asked.push(entry);
    try {
      if (answer.reads !== false)
        for await (const part of request)
          entry.body += part;
      await answer(response, request);
    } catch (error) {
      // A client that goes away is what some tests are about.
      if (!request.destroyed)
        throw error;
    }
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  return {
    asked,
    address: `http://127.0.0.1:${server.address().port}`,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** Gives `use` a client of a service with these answers, and what that service is asked. */
export async function against(answers, use, options) {
  const service = await stub(...answers);
  try {
    return await use(new CalibrationClient(service.address, options), service.asked);
  } finally {
    service.close();
  }
}

/** Answers with JSON. */
export function json(status, body, headers = {}) {
  return response => {
    response.writeHead(status, { "Content-Type": status < 400 ? "application/json" : "application/problem+json", ...headers });
    response.end(JSON.stringify(body));
  };
}

/** Breaks the connection off without an answer. */
export function cut(response) {
  response.destroy();
}

/** A problem as the service tells it. */
export function problem(status, code, detail = "It cannot be done.") {
  return { type: "about:blank", title: "Title", status, detail, traceId: "trace", errors: [{ code, detail }] };
}
