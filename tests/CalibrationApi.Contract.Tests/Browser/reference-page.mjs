// Opens the reference page and the page of codes, reads what they list, filters, follows a link, tries an operation out, and
// takes pictures on a desk and on a phone, by day and by night.
// node reference-page.mjs <chromium> <address of the service> <folder for the pictures>
import path from "node:path";
import { inChromium } from "../../CalibrationApi.Testing/Browser/chromium.mjs";

const [executable, address, folder] = process.argv.slice(2);
const sizes = [{ width: 1280, height: 900, mobile: false }, { width: 390, height: 844, mobile: true }];
const views = [];

const seen = await inChromium(executable, async page => {
  const device = await page.context().newCDPSession(page);
  const tag = name => page.locator(".opblock", { has: page.locator(".opblock-summary-operation-id", { hasText: name }) });

  await open("/reference");
  const operations = await page.locator(".opblock-summary-operation-id").allTextContents();
  const groups = await page.locator(".opblock-tag").evaluateAll(all => all.map(group => group.dataset.tag));
  await look("list");

  const filter = page.locator(".operation-filter-input");
  await filter.fill("Evaluate a CATCH test");
  await page.waitForFunction(before => document.querySelectorAll(".opblock").length < before, operations.length);
  const filtered = await page.locator(".opblock-summary-operation-id").allTextContents();
  await filter.fill("");
  await page.waitForFunction(before => document.querySelectorAll(".opblock").length === before, operations.length);

  const operation = tag(/^evaluateCatchTest$/);
  await operation.locator(".opblock-summary-control").click();
  const link = new URL(page.url()).hash;
  await operation.locator(".try-out__btn").click();
  await operation.locator(".execute").click();
  const answer = operation.locator(".live-responses-table");
  await answer.waitFor();
  const status = (await answer.locator("tbody .response-col_status").first().innerText()).trim().split(/\s/)[0];
  const body = await answer.locator(".highlight-code").first().innerText();
  const asked = await operation.locator(".request-url pre").innerText();
  await look("answer", operation);

  // The link that the opened operation left in the address, as somebody else gets it.
  await page.goto("about:blank");
  await open(`/reference/index.html${link}`);
  await page.locator(".opblock.is-open").waitFor();
  const linked = {
    link,
    opened: await page.locator(".opblock.is-open .opblock-summary-operation-id").allTextContents(),
    // The page scrolls there after a moment.
    isInSight: await page.waitForFunction(() => {
      const { top, bottom } = document.querySelector(".opblock.is-open .opblock-summary").getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    }).then(() => true, () => false),
  };

  await open("/reference/codes");
  const codes = { all: await page.locator("article").count() };
  await look("codes");
  await page.locator("[type=search]").fill("scale division");
  codes.found = await page.locator("article:visible h3 a").allTextContents();
  codes.told = await page.locator("output").innerText();
  await page.evaluate(() => { location.hash = "media-type-unsupported"; });
  await page.locator("#media-type-unsupported").waitFor();
  codes.leftForALink = await page.locator("[type=search]").inputValue() === "";
  return { operations, groups, filtered, status, body, asked, linked, codes, views };

  async function open(place) {
    await page.goto(address + place);
    await page.locator(".opblock, article").first().waitFor();
  }

  async function look(name, at) {
    for (const scheme of ["light", "dark"]) {
      await page.emulateMedia({ colorScheme: scheme });
      // The reference page asks for the scheme once, when it is opened.
      await page.evaluate(isDark => document.querySelector("#swagger-ui") && document.documentElement.classList.toggle("dark-mode", isDark), scheme === "dark");
      for (const size of sizes) {
        // Pictures are as large as the first says; only the second makes a phone of it, which heeds the line on the viewport.
        await page.setViewportSize({ width: size.width, height: size.height });
        await device.send("Emulation.setDeviceMetricsOverride", { ...size, deviceScaleFactor: 1 });
        await page.evaluate(() => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn))));
        views.push({ name, scheme, viewport: size.width, ...await page.evaluate(measured, size.width) });
        const picture = path.join(folder, `${name}-${scheme}-${size.width}.png`);
        await (at ? at.screenshot({ path: picture }) : page.screenshot({ path: picture }));
      }
    }
    await page.emulateMedia({ colorScheme: "light" });
    await page.evaluate(() => document.documentElement.classList.remove("dark-mode"));
    await device.send("Emulation.clearDeviceMetricsOverride");
    await page.setViewportSize({ width: sizes[0].width, height: sizes[0].height });
  }
});
console.log(JSON.stringify(seen));

// Runs in the page: its width, what reaches beyond its edge, the smallest letters as the eye meets them, and the faintest text.
function measured(screen) {
  const shown = [...document.querySelectorAll("body *")].filter(element => element.checkVisibility());
  const nameOf = element => `${element.tagName.toLowerCase()}.${element.className}`;
  // What lies in a box that scrolls by itself can be reached.
  const isReachable = element => {
    for (let box = element.parentElement; box && box !== document.body; box = box.parentElement)
      if (["auto", "scroll"].includes(getComputedStyle(box).overflowX))
        return true;
    return false;
  };
  const beyond = shown
    .filter(element => element.getBoundingClientRect().right > document.documentElement.clientWidth + 1 && !isReachable(element))
    .map(nameOf);

  const texts = shown.filter(element => [...element.childNodes].some(node => node.nodeType === 3 && node.textContent.trim() !== ""));
  // A page that does not fit a phone is laid out for a desk and shown smaller.
  const scale = screen / window.innerWidth;
  const smallest = texts
    .map(element => ({ element: nameOf(element), size: parseFloat(getComputedStyle(element).fontSize) * scale }))
    .reduce((least, one) => (one.size < least.size ? one : least));

  const channels = color => (color.match(/[\d.]+/g) ?? [0, 0, 0, 0]).map(Number);
  const luminance = color => channels(color).slice(0, 3)
    .map(value => value / 255).map(value => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4))
    .reduce((sum, value, i) => sum + value * [0.2126, 0.7152, 0.0722][i], 0);
  const ground = element => {
    for (let box = element; box; box = box.parentElement) {
      const color = getComputedStyle(box).backgroundColor;
      if ((channels(color)[3] ?? 1) > 0.9)
        return color;
    }
    return getComputedStyle(document.documentElement).colorScheme.includes("dark") ? "rgb(0, 0, 0)" : "rgb(255, 255, 255)";
  };
  // Contrast of WCAG 2.2, success criterion 1.4.3; what is shown faint on purpose, as a disabled box, has an opacity of its own.
  const faint = texts
    .filter(element => getComputedStyle(element).opacity === "1")
    .map(element => {
      const [light, dark] = [luminance(getComputedStyle(element).color), luminance(ground(element))].sort((a, b) => b - a);
      return { element: nameOf(element), contrast: (light + 0.05) / (dark + 0.05) };
    })
    .filter(one => one.contrast < 3)
    .map(one => `${one.element} (${one.contrast.toFixed(2)})`);
  return { width: document.documentElement.scrollWidth, layout: window.innerWidth, beyond, smallest, faint: [...new Set(faint)] };
}
