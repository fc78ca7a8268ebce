import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { longNames } from "./longNames.ts";
import { openBrowser } from "./openBrowser.ts";
import type { WorstStudio } from "./worstStudio.ts";

// That long names break no page is the house's own rule: common practice, no source. Read back from the finished PDFs by pdf.js.

let names: WorstStudio;
let built: Built;
let session: BrowserSession;

beforeAll(async () => {
  names = longNames();
  built = await buildStudio(names.content);
  session = await openBrowser();
});
afterAll(async () => {
  await session?.close();
  await built?.remove();
  names?.remove();
});

interface Word {
  readonly text: string;
  /** Its size, and its foot above the page's lower edge, points. */
  readonly size: number;
  readonly y: number;
}

async function wordsOf(name: string): Promise<Word[][]> {
  const data = new Uint8Array(await readFile(join(built.out, name)));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages: Word[][] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const { items } = await (await pdf.getPage(at)).getTextContent();
    pages.push(
      items.flatMap((one) =>
        "str" in one && one.str.trim()
          ? [
              {
                text: one.str,
                size: Math.hypot(one.transform[0], one.transform[1]),
                y: one.transform[5],
              },
            ]
          : [],
      ),
    );
  }
  await pdf.loadingTask.destroy();
  return pages;
}

test("where each of twelve cloths and each colour goes ends above the page's foot", async () => {
  const pages = await wordsOf("client/names/great/index.pdf");
  const where = pages.find((p) => p.some((w) => w.text.startsWith("Where it goes"))) as Word[];
  // The lower margin of a board is sixteen millimetres, 45 points; a line's foot may reach a little into it.
  expect(Math.min(...where.map((w) => w.y))).toBeGreaterThan(36);
});

test("a maker's sheet is printed at its own size: nothing on it is so wide that its browser makes all of it smaller, and its scales false", async () => {
  const pages = await wordsOf("makers/tidewell/names/great.pdf");
  const heads = pages.flat().filter((w) => /^Cutting plan/.test(w.text));
  expect(heads.length).toBeGreaterThan(3);
  for (const head of heads) expect(head.size).toBeCloseTo(16, 1);
});

test("on a telephone no page moves sideways, and no cell of the order list is a column of single letters", async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 360, height: 844 });
  for (const name of built.files.filter((f) =>
    /names\/(proposal|orders|schedule)\.html$/.test(f),
  )) {
    await page.goto(`file://${join(built.out, name)}`);
    const over = await page.evaluate("document.documentElement.scrollWidth - innerWidth");
    expect(over, name).toBeLessThanOrEqual(0);
    const narrow = await page.evaluate(
      `[...document.querySelectorAll(".by-rows tbody td")].filter((td) => td.textContent.trim().length > 8).map((td) => td.getBoundingClientRect().width)`,
    );
    expect(Math.min(999, ...(narrow as number[])), name).toBeGreaterThan(90);
  }
  await page.close();
});
