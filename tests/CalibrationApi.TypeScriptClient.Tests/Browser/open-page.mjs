// Opens a page in a browser and prints what its script found.
// node open-page.mjs <chromium> <address of the page>
import { inChromium } from "../../CalibrationApi.Testing/Browser/chromium.mjs";

const [executable, address] = process.argv.slice(2);
const seen = await inChromium(executable, async page => {
  await page.goto(address);
  await page.waitForFunction(() => window.outcome !== undefined);
  return page.evaluate(() => window.outcome);
});
console.log(JSON.stringify(seen));
