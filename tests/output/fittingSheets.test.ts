import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";
import { pdfPages } from "./pdfPages.ts";
import { worstLetters } from "./worstLetters.ts";
import { PAPERS, type WorstStudio } from "./worstStudio.ts";

// How the fitter's sheet stands on its pages is the house's own rule: common practice, no source. Read back from the PDFs by pdf.js.

interface Thing {
  readonly name: string;
  readonly texts: readonly string[];
  readonly ticks: number;
  readonly blanks: number;
}

/** Latin letters and figures of each thing on a sheet; how wide each drawing is against what its own scale makes it. */
const THINGS = `(() => {
  const plain = (t) => t.replace(/[^a-z\\d]/gi, "");
  const textsOf = (root) => {
    const texts = [];
    const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode())
      if (plain(node.data) && !node.parentElement.closest("title, desc")) texts.push(plain(node.data));
    return texts;
  };
  return {
    things: [...document.querySelectorAll(".fit")].map((fit) => ({
      name: fit.getAttribute("aria-label"),
      texts: textsOf(fit),
      ticks: fit.querySelectorAll(".tick").length,
      blanks: fit.querySelectorAll(".checks .blank").length,
    })),
    made: [...document.querySelectorAll(".fitting svg[role=img]")].map(
      (s) => (s.getBoundingClientRect().width * 25.4) / 96 / parseFloat(s.getAttribute("width"))),
    wide: document.documentElement.scrollWidth - innerWidth,
  };
})()`;

let session: BrowserSession;
const studios: WorstStudio[] = [];
const built: { readonly studio: Built; readonly textMm: number }[] = [];

beforeAll(async () => {
  session = await openBrowser();
  built.push({ studio: await buildStudio(), textMm: 170.9 });
  for (const [paper, units] of PAPERS) {
    const worst = worstLetters(paper, units);
    studios.push(worst);
    built.push({ studio: await buildStudio(worst.content), textMm: paper === "a3" ? 171 : 170.9 });
  }
});
afterAll(async () => {
  await session?.close();
  for (const { studio } of built) await studio.remove();
  for (const one of studios) one.remove();
});

test("a thing stands whole on one page with boxes to tick and a rule to write its height on, drawings at their stated scale", async () => {
  const page = await session.browser.newPage();
  await page.emulateMediaType("print");
  const faults: string[] = [];
  let seen = 0;
  for (const { studio, textMm } of built) {
    await page.setViewport({ width: Math.round((textMm * 96) / 25.4), height: 1000 });
    for (const name of studio.files.filter((f) => /^makers\/.*\/fitting\.html$/.test(f))) {
      await page.goto(`file://${join(studio.out, name)}`);
      await page.evaluate("document.fonts.ready.then(() => true)");
      const { things, made, wide } = (await page.evaluate(THINGS)) as {
        things: readonly Thing[];
        made: readonly number[];
        wide: number;
      };
      const pages = await pdfPages(join(studio.out, name.replace(/html$/, "pdf")));
      for (const thing of things) {
        seen += 1;
        if (!pages.some((text) => thing.texts.every((words) => text.includes(words))))
          faults.push(`${name}: broken: ${thing.name}`);
        if (thing.ticks < 4 || thing.blanks < 1) faults.push(`${name}: no boxes: ${thing.name}`);
      }
      if (made.some((part) => Math.abs(part - 1) > 0.01)) faults.push(`${name}: not to scale`);
      if (wide > 0) faults.push(`${name}: too wide`);
    }
  }
  await page.close();
  expect(faults).toEqual([]);
  expect(seen).toBeGreaterThanOrEqual(11);
});

test("the fitter's sheets of the demo take two pages each", async () => {
  const demo = built[0]?.studio as Built;
  const sheets = demo.files.filter((f) => /^makers\/lowry\/.*\/fitting\.pdf$/.test(f));
  expect(sheets.length).toBe(3);
  for (const sheet of sheets) expect((await pdfPages(join(demo.out, sheet))).length, sheet).toBe(2);
});

test("on a telephone no words run out of the page", async () => {
  const demo = built[0]?.studio as Built;
  const page = await session.browser.newPage();
  await page.setViewport({ width: 360, height: 740 });
  await page.goto(`file://${join(demo.out, "makers/lowry/gannet-house/dining-room/fitting.html")}`);
  const out =
    (await page.evaluate(`[...document.querySelectorAll("main p, main li, main h3")].filter(
    (e) => !e.closest(".wide") && e.getBoundingClientRect().right > innerWidth + 1).map((e) => e.textContent)`)) as string[];
  await page.close();
  expect(out).toEqual([]);
});
