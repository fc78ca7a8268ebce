import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import type { Built } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";
import { stagedPages } from "./staged.ts";

// What a hand needs to write with a pencil, and how long the studio's lists may be, is the house's own rule: common practice, no source.

const PAPERS = ["tabloid", "a3"] as const;
/** Width of the text, millimetres: letter and A4 less the margins of the style sheet. */
const TEXT_MM = { tabloid: 170.9, a3: 165 } as const;
const PROJECTS = ["gannet-house", "ropewalk-house"];

/** By paper: the demo as it is, and with what came filled in. */
const built = new Map<string, Built>();
const filled = new Map<string, Built>();
const folders: string[] = [];
let session: BrowserSession;

/** The demo on a paper; `came`: with a cloth that came in part, so that boxes are filled in too. */
function studioOn(paper: (typeof PAPERS)[number], came: boolean): string {
  const dir = mkdtempSync(join(tmpdir(), "roomcloth-slip-"));
  folders.push(dir);
  cpSync(resolve(import.meta.dirname, "../../content"), dir, { recursive: true });
  const change = (path: string, from: RegExp, to: string): void => {
    const text = readFileSync(join(dir, path), "utf8");
    expect(from.test(text), path).toBe(true);
    writeFileSync(join(dir, path), text.replace(from, to));
  };
  change("studio.md", /^paper:.*$/m, `paper: ${paper}`);
  const receipts = `receipts:
  - { cloth: pomander, lot: P-221/4 second piece, maker: tidewell, length: 15 3/8 yd, width: 53 11/16", repeat: 25 3/16", first-motif: 12 15/16", on: 2026-09-30, flaws: [{ from: 3 1/4 yd, length: 6 1/2", from-left: 12 3/8", width: 3 1/4", what: slub }] }
`;
  if (came) change("projects/gannet-house/project.md", /^(?=approvals:)/m, receipts);
  return dir;
}

beforeAll(async () => {
  session = await openBrowser();
  for (const paper of PAPERS) {
    built.set(paper, await stagedPages(studioOn(paper, false), /^studio\//));
    filled.set(paper, await stagedPages(studioOn(paper, true), /^studio\//));
  }
});
afterAll(async () => {
  await session?.close();
  for (const one of [...built.values(), ...filled.values()]) await one.remove();
  for (const dir of folders) rmSync(dir, { recursive: true, force: true });
});

/** Runs in the page as it is printed: boxes too low or too narrow to write in, words that leave them, and lines for the file that break. */
const FAULTS = `(() => {
  const mm = 96 / 25.4, pt = 96 / 72;
  const faults = [];
  const boxes = [...document.querySelectorAll(".boxes li")];
  if (boxes.length < 50) faults.push("only " + boxes.length + " boxes");
  for (const box of boxes) {
    const at = box.closest(".slip").querySelector("h2").textContent + ", " + box.textContent;
    const { width, height } = box.getBoundingClientRect();
    if (height < 8 * mm) faults.push(at + ": " + height / mm + " mm high");
    if (width < 22 * mm) faults.push(at + ": " + width / mm + " mm wide");
    if (box.scrollWidth > box.clientWidth + 0.5 || box.scrollHeight > box.clientHeight + 0.5) faults.push(at + ": words leave the box");
    const label = box.querySelector(".label");
    if (label && label.scrollWidth > label.clientWidth) faults.push(at + ": its name is cut off");
  }
  for (const words of document.querySelectorAll(".slip, .slip .label, .slip code, .slip .ticks span"))
    if (parseFloat(getComputedStyle(words).fontSize) < 9 * pt - 0.01) faults.push(words.textContent + ": too small");
  for (const line of document.querySelectorAll(".slip code"))
    if (line.getBoundingClientRect().height > 4.5 * mm) faults.push(line.textContent + " breaks");
  return faults;
})()`;

test.each(PAPERS)(
  "on %s every box of the slip can be written in, and what came stands inside its box",
  async (paper) => {
    const page = await session.browser.newPage();
    await page.emulateMediaType("print");
    await page.setViewport({ width: Math.round((TEXT_MM[paper] * 96) / 25.4), height: 1000 });
    for (const project of PROJECTS) {
      const { out } = filled.get(paper) as Built;
      await page.goto(`file://${join(out, `studio/${project}/receiving.html`)}`);
      await page.evaluate("document.fonts.ready");
      expect(await page.evaluate(FAULTS), project).toEqual([]);
    }
    await page.close();
  },
);

test.each(PAPERS)(
  "on %s schedule and tray are two pages at most, the slip of many cloths three, and nothing stands alone on the last",
  async (paper) => {
    const { out } = built.get(paper) as Built;
    const most = { schedule: 2, samples: 2, receiving: 3 };
    const page = await session.browser.newPage();
    for (const project of PROJECTS)
      for (const [name, pages] of Object.entries(most)) {
        // Printed from the browser: the same sheets as the PDF beside it (printedByBrowser.test.ts).
        await page.goto(`file://${join(out, `studio/${project}/${name}.html`)}`);
        await page.evaluate("document.fonts.ready.then(() => true)");
        const data = await page.pdf({ preferCSSPageSize: true });
        const pdf = await getDocument({ data, verbosity: 0 }).promise;
        expect(pdf.numPages, `${project} ${name}`).toBeLessThanOrEqual(pages);
        const { items } = await (await pdf.getPage(pdf.numPages)).getTextContent();
        const words = items.map((i) => ("str" in i ? i.str : "")).join(" ");
        expect(words.length, `the last page of ${project} ${name}`).toBeGreaterThan(300);
        await pdf.loadingTask.destroy();
      }
    await page.close();
  },
);

/** Runs in the page as it is printed: words of the order list that break within themselves. */
const BROKEN = `(() => {
  const broken = [];
  const walk = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    if (!node.parentElement.closest(".order-table td")) continue;
    for (const { 0: word, index } of node.data.matchAll(/\\S+/g)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      if (new Set([...range.getClientRects()].map((r) => Math.round(r.top))).size > 1) broken.push(word);
    }
  }
  return broken;
})()`;

test.each(PAPERS)("on %s no word of the order list breaks within its column", async (paper) => {
  const page = await session.browser.newPage();
  await page.emulateMediaType("print");
  await page.setViewport({ width: Math.floor((TEXT_MM[paper] * 96) / 25.4), height: 1000 });
  for (const project of PROJECTS) {
    await page.goto(
      `file://${join((built.get(paper) as Built).out, `studio/${project}/orders.html`)}`,
    );
    await page.evaluate("document.fonts.ready.then(() => true)");
    expect(await page.evaluate(BROKEN), project).toEqual([]);
  }
  await page.close();
});
