// A headless Chromium that reaches nothing but this machine. Runs in the folder that holds the npm tools.
import { mkdtemp, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";

const { chromium } = createRequire(`${process.cwd()}/`)("playwright-core");

// The browser itself asks nobody outside for news either.
const flags = [
  "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
  // Root, as on build machines, cannot use the sandbox.
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
];

/** Opens a window, gives it to `use`, and returns what that returns, with every request that left this machine or failed. */
export async function inChromium(executablePath, use) {
  const profile = await mkdtemp(path.join(tmpdir(), "calibration-chromium-"));
  const context = await chromium.launchPersistentContext(profile, { executablePath, args: flags, viewport: { width: 1280, height: 900 } });
  const [outside, errors] = [[], []];
  try {
    await context.route("**/*", route => {
      const { hostname, protocol } = new URL(route.request().url());
      const isHere = ["localhost", "127.0.0.1", "[::1]"].includes(hostname) || ["data:", "blob:"].includes(protocol);
      if (isHere)
        return route.continue();
      outside.push(route.request().url());
      return route.abort();
    });
    const page = context.pages()[0] ?? await context.newPage();
    // Generous: it only ends what would never end.
    page.setDefaultTimeout(120_000);
    page.on("pageerror", error => errors.push(String(error)));
    page.on("console", message => message.type() === "error" && errors.push(message.text()));
    return { ...await use(page), outside, errors };
  } finally {
    await context.close();
    await rm(profile, { recursive: true, force: true });
  }
}
