import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, buildStudio } from "./demo.ts";

// Read back by pdf.js, a reader that has no part in the making. Sheets: ANSI tabloid 17 x 11 in, letter 8.5 x 11 in, in points of 1/72 in.
const SHEETS = { tabloid: [1224, 792], letter: [612, 792] } as const;
/** A hundredth of a millimetre. */
const TOLERANCE_PT = 0.03;

let demo: Built;
interface Read {
  readonly name: string;
  readonly sizes: readonly (readonly [number, number])[];
  readonly texts: readonly string[];
  readonly info: Record<string, unknown>;
  readonly marked: boolean;
  readonly outline: number;
  readonly tags: ReadonlySet<string>;
}
const read: Read[] = [];

async function readBack(name: string): Promise<Read> {
  const data = new Uint8Array(await readFile(join(demo.out, name)));
  const document = await getDocument({
    data,
    useSystemFonts: false,
    verbosity: 0,
  }).promise;
  const sizes: [number, number][] = [];
  const texts: string[] = [];
  const tags = new Set<string>();
  const collect = (node: { role?: string; children?: unknown[] } | null): void => {
    if (!node) return;
    if (node.role) tags.add(node.role);
    for (const child of node.children ?? [])
      collect(child as { role?: string; children?: unknown[] });
  };
  for (let at = 1; at <= document.numPages; at++) {
    const page = await document.getPage(at);
    const view = page.getViewport({ scale: 1 });
    sizes.push([view.width, view.height]);
    const content = await page.getTextContent();
    texts.push(content.items.map((item) => ("str" in item ? item.str : "")).join(" "));
    collect((await page.getStructTree()) as never);
  }
  const meta = await document.getMetadata();
  const marks = await document.getMarkInfo();
  const outline = (await document.getOutline()) ?? [];
  await document.loadingTask.destroy();
  return {
    name,
    sizes,
    texts,
    info: meta.info as Record<string, unknown>,
    marked: marks?.Marked === true,
    outline: outline.length,
    tags,
  };
}

beforeAll(async () => {
  demo = await buildStudio();
  for (const name of demo.files.filter((file) => file.endsWith(".pdf")))
    read.push(await readBack(name));
});
afterAll(() => demo.remove());

test("the first page of the findings holds what is open in every room; the notes hold every origin once", () => {
  const findings = read.find((one) => one.name === "studio/gannet-house/findings.pdf") as Read;
  const first = findings.texts[0] as string;
  for (const open of [
    "Dining room",
    "Study",
    "close in size",
    "Nothing is said of fire tests",
    "under the limit",
  ])
    expect(first).toContain(open);
  // What works, what is seen and the workings come after it.
  expect(first).not.toMatch(/what works|what is seen|Working Result/);
  const whole = findings.texts.join(" ");
  const notes = whole.slice(whole.indexOf("Where the figures come from "));
  expect(notes).toContain("studio.md");
  const named = [...whole.matchAll(/notes ([\d\u2013, ]+\d)/g)].flatMap((m) =>
    (m[1] as string).match(/\d+/g)?.map(Number),
  );
  expect(named.length).toBeGreaterThan(20);
  for (const number of new Set(named)) expect(notes).toContain(`${number}.`);
});

test("every page is exactly a sheet, and none is blank", () => {
  expect(read.length).toBeGreaterThan(8);
  for (const { name, sizes, texts } of read) {
    for (const [at, [width, height]] of sizes.entries()) {
      const fits = Object.values(SHEETS).some(
        ([w, h]) => Math.abs(w - width) <= TOLERANCE_PT && Math.abs(h - height) <= TOLERANCE_PT,
      );
      expect(fits, `${name}, page ${at + 1}: ${width} x ${height}`).toBe(true);
      expect(texts[at]?.replace(/\s/g, "").length, `${name}, page ${at + 1}`).toBeGreaterThan(3);
    }
  }
});

test("boards are on tabloid, makers' sheets on letter, a proposal mixes both", () => {
  const sizesOf = (part: string): Set<number> =>
    new Set(
      read.filter((r) => r.name.includes(part)).flatMap((r) => r.sizes.map(([w]) => Math.round(w))),
    );
  expect(sizesOf("dining-room/index")).toEqual(new Set([1224]));
  expect(sizesOf("makers/")).toEqual(new Set([612]));
  expect(sizesOf("proposal")).toEqual(new Set([1224, 612]));
});

test("every page of a maker's sheet begins with an item or a cutting plan: none is broken over two pages", async () => {
  // The fitter's sheet goes by walls, not by items: fittingSheets.test.ts reads its pages.
  const sheets = read.filter(
    (r) => r.name.startsWith("makers/") && !r.name.endsWith("/fitting.pdf"),
  );
  expect(sheets.length).toBeGreaterThan(5);
  const plain = (text: string) => text.replace(/&[^;]+;/g, "").replace(/[^\p{L}\d]/gu, "");
  for (const { name, texts } of sheets) {
    const html = await readFile(join(demo.out, name.replace(/pdf$/, "html")), "utf8");
    const headings = [
      ...html.matchAll(
        /<header class="item-head(?: plan-head" style="--project:\d+)?"><h2>(.*?)<\/h2>/g,
      ),
    ].map((m) => plain(m[1] as string));
    expect(headings.length, name).toBeGreaterThan(1);
    for (const [at, text] of texts.entries()) {
      // The running words over the page may come first.
      const first = headings.map((h) => plain(text).indexOf(h)).filter((found) => found >= 0);
      expect(Math.min(1000, ...first), `${name}, page ${at + 1}`).toBeLessThan(160);
    }
  }
});

test("each is tagged, in its language, with a title and an outline, and says nothing of where it was made", () => {
  for (const { name, info, marked, outline, tags } of read) {
    expect(marked, name).toBe(true);
    expect(info.Language, name).toBe("en-US");
    expect(String(info.Title), name).not.toBe("");
    expect(outline, name).toBeGreaterThan(0);
    expect(tags.has("H1") || tags.has("H2"), name).toBe(true);
    expect(JSON.stringify(info), name).not.toMatch(/\/tmp|\/home|\/root|file:|localhost/);
  }
  expect(read.find((r) => r.name.endsWith("proposal.pdf"))?.tags.has("Table")).toBe(true);
  expect(read.find((r) => r.name.endsWith("dining-room/index.pdf"))?.tags.has("Figure")).toBe(true);
});

test("the text of a PDF is the text of its page, fractions and marks too", async () => {
  const sheet = read.find((r) => r.name === "makers/tidewell/gannet-house/dining-room.pdf");
  const html = await readFile(
    join(demo.out, "makers/tidewell/gannet-house/dining-room.html"),
    "utf8",
  );
  const words = [
    ...html
      .replace(/<(style|title|desc)[\s\S]*?<\/\1>/g, " ")
      .replace(/<[^>]+>/g, " ")
      .replace(/&[^;]+;/g, " ")
      .matchAll(/[\p{L}]{4,}/gu),
  ].map((m) => m[0]);
  const text = (sheet?.texts.join(" ") ?? "").replace(/\s/g, "");
  const lost = [...new Set(words)].filter((word) => !text.includes(word));
  expect(lost).toEqual([]);
  expect(sheet?.texts.join(" ").replace(/\s/g, "")).toMatch(/\d+[/⁄]\d+″/);
});
