// Opens the reference page, reads what it lists, tries an operation out, and takes pictures.
// node reference-page.mjs <chromium> <address of the service> <folder for the pictures>
import path from "node:path";
import { inChromium } from "../../CalibrationApi.Testing/Browser/chromium.mjs";

const [executable, address, folder] = process.argv.slice(2);
const wide = { width: 1280, height: 900 };
const narrow = { width: 390, height: 844 };
const widths = [];

const seen = await inChromium(executable, async page => {
  await page.goto(`${address}/reference`);
  await page.locator(".opblock").first().waitFor();
  const operations = await page.locator(".opblock-summary-operation-id").allTextContents();
  await look("list");

  const operation = page.locator(".opblock", { has: page.locator(".opblock-summary-operation-id", { hasText: /^evaluateCatchTest$/ }) });
  await operation.locator(".opblock-summary-control").click();
  await operation.locator(".try-out__btn").click();
  await operation.locator(".execute").click();
  const answer = operation.locator(".live-responses-table");
  await answer.waitFor();
  const status = (await answer.locator("tbody .response-col_status").first().innerText()).trim().split(/\s/)[0];
  const body = await answer.locator(".highlight-code").first().innerText();
  const asked = await operation.locator(".request-url pre").innerText();
  await look("answer", operation);
  return { operations, status, body, asked, widths };

  async function look(name, at) {
    for (const size of [wide, narrow]) {
      await page.setViewportSize(size);
      await page.evaluate(() => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn))));
      const beyond = await page.evaluate(() => {
        // What lies in a box that scrolls by itself can be reached.
        const isReachable = element => {
          for (let box = element.parentElement; box && box !== document.body; box = box.parentElement)
            if (["auto", "scroll"].includes(getComputedStyle(box).overflowX))
              return true;
          return false;
        };
        return [...document.querySelectorAll("body *")]
          .filter(element => element.getBoundingClientRect().right > document.documentElement.clientWidth + 1 && !isReachable(element))
          .map(element => `${element.tagName.toLowerCase()}.${element.className}`);
      });
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      widths.push({ name, viewport: size.width, width, beyond });
      const picture = path.join(folder, `${name}-${size.width}.png`);
      await (at ? at.screenshot({ path: picture }) : page.screenshot({ path: picture, fullPage: true }));
    }
    await page.setViewportSize(wide);
  }
});
console.log(JSON.stringify(seen));
