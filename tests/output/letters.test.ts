import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, buildStudio } from "./demo.ts";
import { lastRole } from "./lastRole.ts";
import { worstLetters } from "./worstLetters.ts";
import type { WorstStudio } from "./worstStudio.ts";

// Read back by pdf.js and pdf-lib from what was printed. What a page must bear is the house's own rule: common practice, no source.

let demo: Built;
let worst: WorstStudio;
let letters: Built;

beforeAll(async () => {
  demo = await buildStudio();
  worst = worstLetters("tabloid", "inches");
  letters = await buildStudio(worst.content);
});
afterAll(async () => {
  await demo?.remove();
  await letters?.remove();
  worst?.remove();
});

interface ReadPage {
  readonly text: string;
  /** Words that begin or end beyond the sheet. */
  readonly outside: readonly string[];
  /** The role of its last element. */
  readonly last: string;
}

async function pagesOf(studio: Built, name: string): Promise<ReadPage[]> {
  const data = new Uint8Array(await readFile(join(studio.out, name)));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const page = await pdf.getPage(at);
    const [, , right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const words = items.flatMap((one) => ("str" in one && one.str.trim() ? [one] : []));
    const outside = words.filter(({ transform: [a, b, , , x, y], width }) => {
      const ends = [x + (a === 0 ? 0 : width), y + (b === 0 ? 0 : Math.sign(b) * width)];
      return x < -1 || y < -1 || ends[0] > right + 1 || ends[1] > top + 1 || ends[1] < -1;
    });
    pages.push({
      text: words.map((w) => w.str).join(" "),
      outside: outside.map((w) => w.str),
      last: await lastRole(page),
    });
  }
  await pdf.loadingTask.destroy();
  return pages;
}

test("forty items with long names: the budget breaks with its head said again, phases that fit stay whole, the total stays with its fees", async () => {
  const pages = await pagesOf(letters, "client/forty/proposal.pdf");
  const budget = pages.filter((p) => /What In With \$/.test(p.text));
  expect(budget).toHaveLength(2);
  const last = budget[1]?.text as string;
  expect(last).toMatch(/Design fee .*Survey and measuring .*Kept in reserve .*Total 1/);
  expect(last).toMatch(/Last .*Drapery, bay .*Armchair, wing chair/);
  expect(budget[0]?.text).not.toMatch(/Hard to undo|Made to measure/);
});

test("forty items: the lists of where each cloth and colour goes end on their page", async () => {
  const pages = await pagesOf(letters, "client/forty/proposal.pdf");
  const where = pages.find((p) => p.text.startsWith("Where it goes"))?.text ?? "";
  expect(where).toMatch(
    /Yellowish white .* more Grayish green .* more Grayish reddish orange .* more Moderate yellowish green .* more/,
  );
  expect(where).not.toMatch(/\d%\. [a-z]/);
});

test("a step that brings no new cloth or colour names its pieces", async () => {
  const pages = await pagesOf(letters, "client/forty/proposal.pdf");
  expect(pages.map((p) => p.text).join(" ")).toMatch(
    /Last \$[\d,.]+ Two draperies and two armchairs\./,
  );
});

test("where nothing is listed yet there is no sum to sign, and no page about places", async () => {
  const pages = await pagesOf(letters, "client/begun/proposal.pdf");
  const text = pages.map((p) => p.text).join(" ");
  expect(text).toMatch(/Nothing yet is listed to be made or bought for the box room\./);
  expect(text).not.toMatch(/Signed, for|before you sign|Total|Where it goes|\$/);
  expect(pages).toHaveLength(3);
});

test("a signature never stands alone on its page", async () => {
  for (const project of ["forty", "one", "cuts"]) {
    const pages = await pagesOf(letters, `client/${project}/proposal.pdf`);
    const signed = pages.find((p) => p.text.includes("Signed, for"))?.text ?? "";
    expect(signed, project).toMatch(/Local codes and licensed or tested practice decide/);
  }
});

test("what is over the limit is said though prices are still to come", async () => {
  const pages = await pagesOf(letters, "client/cuts/proposal.pdf");
  expect(pages.map((p) => p.text).join(" ")).toMatch(
    /Not every price is in yet, so this is not the whole of it, and it is already \$[\d,.]+ more than the sum you set\./,
  );
});

test("the demo's findings print on ten pages at most, and its budget on one", async () => {
  expect((await pagesOf(demo, "studio/gannet-house/findings.pdf")).length).toBeLessThanOrEqual(10);
  const proposal = await pagesOf(demo, "client/gannet-house/proposal.pdf");
  expect(proposal.filter((p) => /What In With \$/.test(p.text))).toHaveLength(1);
});

test("no words leave their page, none is blank, and no heading stands alone at a foot, in all that is printed", async () => {
  for (const studio of [demo, letters])
    for (const name of studio.files.filter((f) => f.endsWith(".pdf")))
      for (const [at, page] of (await pagesOf(studio, name)).entries()) {
        expect(page.outside, `${name}, page ${at + 1}`).toEqual([]);
        expect(page.text.length, `${name}, page ${at + 1}`).toBeGreaterThan(3);
        expect(page.last, `${name}, page ${at + 1}`).not.toMatch(/^H\d?$/);
      }
});

test("no letter has a paragraph without words: a heading would stand alone before it", async () => {
  for (const studio of [demo, letters])
    for (const name of studio.files.filter((f) => f.endsWith(".html"))) {
      const html = await readFile(join(studio.out, name), "utf8");
      expect(html.match(/<(p|li|h\d)\b[^>]*>\s*<\/\1>/g) ?? [], name).toEqual([]);
    }
});

test("every figure has words in its place, every table heads to its columns, every link its contents", async () => {
  for (const studio of [demo, letters])
    for (const name of studio.files.filter(
      (f) => /(proposal|index|findings|orders|account)\.pdf$|^makers/.test(f) && f.endsWith(".pdf"),
    )) {
      const pdf = await PDFDocument.load(await readFile(join(studio.out, name)));
      const kinds = new Map<string, number>();
      for (const [, object] of pdf.context.enumerateIndirectObjects()) {
        if (!(object instanceof PDFDict)) continue;
        if (object.get(PDFName.of("Subtype")) === PDFName.of("Link"))
          expect(object.get(PDFName.of("Contents")), `${name}: a link`).toBeDefined();
        if (object.get(PDFName.of("Type")) !== PDFName.of("StructElem")) continue;
        const kind = String(object.get(PDFName.of("S"))).slice(1);
        kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
        if (kind !== "Figure") continue;
        const alt = object.lookup(PDFName.of("Alt"));
        const said =
          alt instanceof PDFString || alt instanceof PDFHexString ? alt.decodeText() : "";
        expect(said.trim(), `${name}: a figure`).not.toBe("");
      }
      // A table of materials has one kind of thing to a column, and no heads; every other has a head to each of its columns.
      if (kinds.has("Table") && !name.startsWith("makers/"))
        expect(kinds.get("TH") ?? 0, name).toBeGreaterThanOrEqual(3);
      expect(pdf.catalog.lookup(PDFName.of("MarkInfo"), PDFDict), name).toBeDefined();
      const outline = pdf.catalog.lookup(PDFName.of("Outlines"), PDFDict);
      expect(outline.get(PDFName.of("First")), name).toBeDefined();
    }
});
