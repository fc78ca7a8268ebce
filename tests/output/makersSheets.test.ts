import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";
import { worstLetters } from "./worstLetters.ts";
import { PAPERS, type WorstStudio } from "./worstStudio.ts";

// What a maker's sheet must bear is the house's own rule: common practice, no source.

let session: BrowserSession;
const studios: WorstStudio[] = [];
const built: Built[] = [];

beforeAll(async () => {
  built.push(await buildStudio());
  for (const [paper, units] of PAPERS) {
    const studio = worstLetters(paper, units);
    studios.push(studio);
    built.push(await buildStudio(studio.content));
  }
  session = await openBrowser();
});
afterAll(async () => {
  await session?.close();
  for (const one of built) await one.remove();
  for (const one of studios) one.remove();
});

const sheetsOf = (studio: Built): string[] =>
  studio.files.filter((f) => /^makers\/.*\.html$/.test(f)).map((f) => join(studio.out, f));

/** Runs in the page: words of a drawing that lie over each other or leave their drawing, by a quarter of their height or more. */
const CLASHES = `(() => {
  const out = [];
  for (const svg of document.querySelectorAll("svg[role=img]")) {
    const name = svg.closest(".item")?.getAttribute("aria-label") + ", " + svg.querySelector("title")?.textContent;
    const frame = svg.getBoundingClientRect();
    const words = [...svg.querySelectorAll("text")].map((t) => {
      const b = t.getBoundingClientRect();
      const [dx, dy] = b.width > b.height ? [0.8, b.height * 0.22] : [b.width * 0.22, 0.8];
      return { said: t.textContent, left: b.left + dx, right: b.right - dx, top: b.top + dy, foot: b.bottom - dy };
    });
    for (const w of words)
      if (w.left < frame.left - 1 || w.right > frame.right + 1 || w.top < frame.top - 1 || w.foot > frame.bottom + 1)
        out.push(name + ": cut off: " + w.said);
    words.forEach((a, i) => {
      for (const b of words.slice(i + 1))
        if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 && Math.min(a.foot, b.foot) - Math.max(a.top, b.top) > 0.5)
          out.push(name + ": " + a.said + " over " + b.said);
    });
  }
  return out;
})()`;

test("no measure or name of a drawing is cut off or lies over another, in inches and in centimetres", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 1200, height: 1000 });
  await page.emulateMediaType("print");
  const faults: string[] = [];
  let drawings = 0;
  for (const studio of built)
    for (const file of sheetsOf(studio)) {
      await page.goto(`file://${file}`);
      await page.evaluate("document.fonts.ready.then(() => true)");
      drawings += Number(await page.evaluate("document.querySelectorAll('svg[role=img]').length"));
      faults.push(...((await page.evaluate(CLASHES)) as string[]));
    }
  await page.close();
  expect(faults).toEqual([]);
  expect(drawings).toBeGreaterThan(120);
});

test("the check itself sees a measure that is moved onto another, and one that leaves its drawing", async () => {
  const page = await session.browser.newPage();
  await page.emulateMediaType("print");
  await page.goto(
    `file://${join((built[0] as Built).out, "makers/tidewell/gannet-house/study.html")}`,
  );
  expect(await page.evaluate(CLASHES)).toEqual([]);
  await page.evaluate(
    "{ const [a, b] = document.querySelectorAll('svg .dimensions text'); b.setAttribute('x', a.getAttribute('x')); b.setAttribute('y', a.getAttribute('y')); b.setAttribute('transform', a.getAttribute('transform') ?? ''); }",
  );
  expect(((await page.evaluate(CLASHES)) as string[]).join()).toContain(" over ");
  await page.evaluate("document.querySelector('svg .dimensions text').setAttribute('x', 300)");
  expect(((await page.evaluate(CLASHES)) as string[]).join()).toContain("cut off");
  await page.close();
});

test("curtains with many questions are drawn at one to forty or larger, and what else they take follows on a second page", () => {
  let seen = 0;
  for (const studio of built)
    for (const file of sheetsOf(studio)) {
      const html = readFileSync(file, "utf8");
      for (const [, scale] of html.matchAll(/front view, closed, one to (\d+)<\/p>/g)) {
        expect(Number(scale), file).toBeLessThanOrEqual(40);
        seen += 1;
      }
    }
  expect(seen).toBeGreaterThanOrEqual(9);
  const unsaid = readFileSync(
    join((built[2] as Built).out, "makers/tidewell/cuts/unsaid.html"),
    "utf8",
  );
  const [first = "", second = ""] = unsaid.split('class="item second begins"');
  expect(first).toMatch(
    /Ask before cutting.*\n?.*Next page: one more drawing, materials and what to check\./s,
  );
  expect(second).toMatch(/Drapery: Bay, second page.*Heading from above.*Materials/s);
});

/** A copy at 71 % (two pages of a sheet on one, ISO 216), read at 200 dots an inch and made black and white at half its light; half of the ink of each word must be left. */
const COPY = { part: 0.71, dotsAnInch: 200, threshold: 128 } as const;

test("every figure of a drawing is still there on a black and white copy at 71 %", async () => {
  const page = await session.browser.newPage();
  const dots = (COPY.part * COPY.dotsAnInch) / 96;
  await page.setViewport({ width: 816, height: 1056, deviceScaleFactor: dots });
  await page.emulateMediaType("print");
  await page.goto(
    `file://${join((built[0] as Built).out, "makers/tidewell/gannet-house/dining-room.html")}`,
  );
  await page.evaluate("document.fonts.ready.then(() => true)");
  const boxes = (await page.evaluate(`(() => {
    const boxes = [];
    const walk = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      if (!node.data.trim() || node.parentElement.closest("title, desc, .skip")) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const b of range.getClientRects())
        if (b.width > 1) boxes.push([node.data.trim(), b.left + scrollX, b.top + scrollY, b.width, b.height]);
    }
    return boxes;
  })()`)) as [string, number, number, number, number][];
  const lines =
    (await page.evaluate(`[...document.querySelectorAll("svg[role=img] [stroke-width]")].map((s) => {
    const m = s.getScreenCTM();
    return (parseFloat(s.getAttribute("stroke-width")) * Math.hypot(m.a, m.b) * 25.4) / 96;
  })`)) as number[];
  const shot = await page.screenshot({ fullPage: true });
  await page.close();
  const grey = sharp(Buffer.from(shot)).greyscale();
  const { data, info } = await grey.raw().toBuffer({ resolveWithObject: true });
  /** The ink that stands in a box, and what a copy keeps of it, in dots. */
  const inkIn = (box: readonly number[]): { is: number; kept: number } => {
    const [x = 0, y = 0, w = 0, h = 0] = box.map((n) => Math.round(n * dots));
    let is = 0;
    let kept = 0;
    for (let row = Math.max(0, y); row < Math.min(info.height, y + h); row++)
      for (let column = Math.max(0, x); column < Math.min(info.width, x + w); column++) {
        const light = data[row * info.width + column] as number;
        is += 1 - light / 255;
        if (light < COPY.threshold) kept += 1;
      }
    return { is, kept };
  };
  expect(boxes.length).toBeGreaterThan(200);
  const lost = boxes.filter(([, ...box]) => {
    const { is, kept } = inkIn(box);
    return is === 0 || kept < is / 2;
  });
  expect(lost.map(([words, ...box]) => `${words} ${JSON.stringify(inkIn(box))}`)).toEqual([]);
  // Nothing is finer than a hatching line; extension lines at 0.18 mm are the finest that a copy keeps whole (print design 10).
  expect(Math.min(...lines)).toBeGreaterThanOrEqual(0.13 - 1e-3);
});

test("a list of sixty cuts breaks between lines, and says its head and its cloth again", async () => {
  const html = readFileSync(
    join((built[2] as Built).out, "makers/tidewell/cuts/many.html"),
    "utf8",
  );
  const list = html.slice(html.indexOf('class="cut-list'));
  expect(list).toMatch(/<thead><tr class="list-title"><th[^>]*>Cut list: Chaff<\/th><\/tr>/);
  expect(list.match(/<tr><td>/g)?.length).toBe(60);
});
