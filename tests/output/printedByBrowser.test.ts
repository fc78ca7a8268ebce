import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDocument, PDFName, PDFRawStream } from "@cantoo/pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";

// A client, a maker or the studio prints a page from a browser: the sheets must be those of the PDF beside it.

let demo: Built;
let session: BrowserSession;

beforeAll(async () => {
  demo = await buildStudio();
  session = await openBrowser();
});
afterAll(async () => {
  await session?.close();
  await demo?.remove();
});

interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly words: string;
}

/** Every sheet of a PDF: its size in points, and its words in their order, without the spaces that line breaks and letters make. */
async function sheetsOf(bytes: Uint8Array): Promise<Sheet[]> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const sheets: Sheet[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const page = await pdf.getPage(at);
    const [left = 0, foot = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const words = items.map((one) => ("str" in one ? one.str : "")).join("");
    sheets.push({
      width: right - left,
      height: top - foot,
      words: words.replace(/\s+/g, ""),
    });
  }
  await pdf.loadingTask.destroy();
  return sheets;
}

/** How many pictures a PDF holds; one that a browser put in twice, as it does where it had to decode it again, counts once. */
async function picturesIn(bytes: Uint8Array): Promise<number> {
  const pdf = await PDFDocument.load(bytes);
  const seen = new Set<string>();
  for (const [, object] of pdf.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFRawStream)) continue;
    if (object.dict.get(PDFName.of("Subtype")) !== PDFName.of("Image")) continue;
    seen.add(createHash("sha256").update(object.contents).digest("hex"));
  }
  return seen.size;
}

/** The browser rounds a sheet up to whole pixels of 1/96 in; the press then sets the exact size. */
const ROUNDED_PT = 1;

/** Where two texts part, with what stands there. */
function parting(a: string, b: string): string {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return `“${a.slice(Math.max(0, at - 30), at + 40)}”, printed “${b.slice(Math.max(0, at - 30), at + 40)}”`;
}

/** How the sheets that a browser prints differ from those of the PDF. */
function differences(name: string, kept: readonly Sheet[], printed: readonly Sheet[]): string[] {
  const faults: string[] = [];
  if (kept.length !== printed.length)
    faults.push(`${name}: ${kept.length} sheets, printed ${printed.length}`);
  for (const [at, sheet] of kept.entries()) {
    const other = printed[at];
    if (!other) continue;
    const where = `${name}, sheet ${at + 1}`;
    if (Math.abs(sheet.width - other.width) > ROUNDED_PT)
      faults.push(`${where}: ${sheet.width} pt wide, printed ${other.width}`);
    if (Math.abs(sheet.height - other.height) > ROUNDED_PT)
      faults.push(`${where}: ${sheet.height} pt high, printed ${other.height}`);
    if (sheet.words !== other.words) faults.push(`${where}: ${parting(sheet.words, other.words)}`);
  }
  return faults;
}

/**
 * The page that each PDF was printed from, and the proposal in one file, which has the proposal's; one of each maker's, and one project's
 * alone, but in the soak.
 */
function pairs(): { html: string; pdf: string }[] {
  const makers = new Set<string>();
  const isTried = (pdf: string): boolean => {
    if (process.env.SOAK) return true;
    const [, maker] = /^makers\/([^/]+)\//.exec(pdf) ?? [];
    return maker ? makers.size < makers.add(maker).size : pdf.includes("gannet-house");
  };
  const own = demo.files
    .filter((f) => f.endsWith(".pdf") && isTried(f))
    .map((pdf) => ({ html: pdf.replace(/\.pdf$/, ".html"), pdf }));
  const sent = demo.files
    .filter((f) => f.endsWith("/proposal-to-send.html") && isTried(f))
    .map((html) => ({ html, pdf: html.replace("-to-send.html", ".pdf") }));
  return [...own, ...sent];
}

test("every document of the demo, printed from a telephone's or a wide window, has the sheets of its PDF: as many, as large, word for word", async () => {
  const documents = pairs();
  expect(documents.filter(({ html }) => html.startsWith("client/")).length).toBeGreaterThan(3);
  expect(documents.filter(({ html }) => html.startsWith("makers/")).length).toBeGreaterThan(3);
  expect(documents.filter(({ html }) => html.startsWith("studio/")).length).toBeGreaterThan(3);
  const page = await session.browser.newPage();
  const faults: string[] = [];
  for (const [at, { html, pdf }] of documents.entries()) {
    await page.setViewport({ width: at % 2 === 0 ? 390 : 1400, height: 900 });
    await page.goto(`file://${join(demo.out, html)}`);
    // As it is when somebody has looked about in it.
    await page.evaluate(
      "{ const c = document.querySelector('.close-up'); c?.showPopover(); for (const d of document.querySelectorAll('details')) d.open = true; scrollTo(0, 900); }",
    );
    const printed = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    const kept = readFileSync(join(demo.out, pdf));
    faults.push(...differences(html, await sheetsOf(kept), await sheetsOf(printed)));
    const [all, there] = [await picturesIn(kept), await picturesIn(printed)];
    if (all !== there) faults.push(`${html}: ${all} pictures, printed ${there}`);
  }
  await page.close();
  expect(faults).toEqual([]);
});

test("the comparison sees a sheet that is missing, one of another size, and a word that is gone", () => {
  const sheet = (words: string, width = 612): Sheet => ({ words, width, height: 792 });
  const kept = [sheet("Ordereveryclothinonelot"), sheet("Two")];
  expect(differences("it", kept, kept)).toEqual([]);
  expect(differences("it", kept, [sheet("Ordereveryclothinonelot")])).toHaveLength(1);
  expect(
    differences("it", kept, [sheet("Ordereveryclothinonelot", 595), sheet("Two")]),
  ).toHaveLength(1);
  expect(differences("it", kept, [sheet("Ordereveryclothinlot"), sheet("Two")])).toHaveLength(1);
});
