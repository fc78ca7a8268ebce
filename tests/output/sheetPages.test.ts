import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { BrowserSession } from "../../src/press/browserSession.ts";
import { type Built, buildStudio } from "./demo.ts";
import { openBrowser } from "./openBrowser.ts";
import { pdfPages } from "./pdfPages.ts";
import { worstLetters } from "./worstLetters.ts";
import { PAPERS, type WorstStudio } from "./worstStudio.ts";

// How makers' sheets fill their pages is the house's own rule: common practice, no source. Read back from the finished PDFs by pdf.js.

/** One block of a sheet as its page in the browser has it. */
interface BlockSeen {
  readonly heading: string;
  /** `item`, `second`, `plan` or `last`. */
  readonly kind: string;
  readonly begins: boolean;
  readonly follows: boolean;
  /** Latin letters and figures of every text in it: a reader of PDFs may turn a Hebrew name round. */
  readonly texts: readonly string[];
  readonly parts: readonly string[];
  readonly heightMm: number;
  /** Of each drawing: how wide it is against what its own scale makes it. */
  readonly made: readonly number[];
  readonly number: string;
}

interface SheetSeen {
  readonly name: string;
  readonly textMm: number;
  readonly blocks: readonly BlockSeen[];
  /** Of each page of the PDF its letters and figures. */
  readonly pages: readonly string[];
}

const BLOCKS = `[...document.querySelectorAll(".item")].map((item) => {
  const plain = (t) => t.replace(/[^a-z\\d]/gi, "");
  const texts = [];
  const walk = document.createTreeWalker(item, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode())
    if (plain(node.data) && !node.parentElement.closest("title, desc, thead")) texts.push(plain(node.data));
  const heading = item.querySelector("h2").textContent;
  const plan = heading.startsWith("Cutting plan");
  const last = item.classList.contains("last");
  return {
    heading, texts,
    kind: last ? "last" : plan ? "plan" : item.classList.contains("second") ? "second" : "item",
    begins: item.classList.contains("begins"),
    follows: item.classList.contains("follows"),
    parts: ["item-head", "item-words", "checks"].filter((c) => item.querySelector("." + c)),
    heightMm: (item.getBoundingClientRect().height * 25.4) / 96,
    made: [...item.querySelectorAll("svg[role=img]")].map(
      (s) => (s.getBoundingClientRect().width * 25.4) / 96 / parseFloat(s.getAttribute("width"))),
    number: item.querySelector(".item-head span:last-child").textContent,
  };
})`;

/** Width and height of the text on letter and on A4, as the style sheet's page margins leave them, millimetres. */
const TEXT = { letter: [170.9, 243.4], a4: [171, 261] } as const;

let session: BrowserSession;
const studios: WorstStudio[] = [];
const built: Built[] = [];
const sheets: SheetSeen[] = [];

async function readSheets(studio: Built, paper: keyof typeof TEXT): Promise<void> {
  const page = await session.browser.newPage();
  const [width, height] = TEXT[paper];
  await page.setViewport({ width: Math.round((width * 96) / 25.4), height: 1000 });
  await page.emulateMediaType("print");
  for (const name of studio.files.filter((f) => /^makers\/.*\.html$/.test(f))) {
    await page.goto(`file://${join(studio.out, name)}`);
    await page.evaluate("document.fonts.ready.then(() => true)");
    const blocks = (await page.evaluate(BLOCKS)) as BlockSeen[];
    const pages = await pdfPages(join(studio.out, name.replace(/html$/, "pdf")));
    sheets.push({ name: `${paper}: ${name}`, textMm: height, blocks, pages });
  }
  await page.close();
}

beforeAll(async () => {
  session = await openBrowser();
  const demo = await buildStudio();
  built.push(demo);
  await readSheets(demo, "letter");
  for (const [paper, units] of PAPERS) {
    const studio = worstLetters(paper, units);
    studios.push(studio);
    const one = await buildStudio(studio.content);
    built.push(one);
    await readSheets(one, paper === "a3" ? "a4" : "letter");
  }
});
afterAll(async () => {
  await session?.close();
  for (const one of built) await one.remove();
  for (const one of studios) one.remove();
});

/** The page of each block: all that it says stands there. -1 where no page has all of it. */
function pageOf({ texts }: BlockSeen, pages: readonly string[]): number {
  return pages.findIndex((page) => texts.every((text) => page.includes(text)));
}

/** Only a plan whose list of cuts is longer than a page goes on over the next, and words of an item taller than a page. */
function mayBreak({ kind, heightMm }: BlockSeen, textMm: number): boolean {
  return kind !== "second" && heightMm > textMm;
}

/** What is wrong with the pages of a sheet, in words. */
function faultsOf({ name, blocks, pages, textMm }: SheetSeen): string[] {
  const faults: string[] = [];
  let before = -1;
  for (const block of blocks) {
    const at = pageOf(block, pages);
    if (mayBreak(block, textMm)) {
      before = pages.findLastIndex((p) => block.texts.some((t) => t.length > 12 && p.includes(t)));
      continue;
    }
    const where = `${name}, ${block.heading}`;
    if (at < 0) faults.push(`${where}: broken over pages, or lost`);
    else if (block.begins && at === before) faults.push(`${where}: begins no page`);
    else if (block.follows && at !== before) faults.push(`${where}: follows nothing on its page`);
    before = at;
  }
  return faults;
}

test("no item and no cutting plan is broken over pages, and each begins a page or follows another as it was laid out", () => {
  expect(sheets.length).toBeGreaterThan(15);
  expect(sheets.flatMap(faultsOf)).toEqual([]);
  const free = sheets.flatMap((s) => s.blocks.filter((b) => !mayBreak(b, s.textMm)));
  expect(free.length).toBeGreaterThan(150);
});

test("the check itself sees a block that is broken, and one that has slipped to the next page", () => {
  const sheet = sheets.find((s) => s.name.includes("tidewell/gannet-house/study")) as SheetSeen;
  const shared = sheet.blocks.find((b) => b.follows) as BlockSeen;
  const at = pageOf(shared, sheet.pages);
  const text = shared.texts.at(-1) as string;
  const cut = sheet.pages.map((p, i) => (i === at ? p.replaceAll(text, "") : p));
  expect(faultsOf({ ...sheet, pages: cut }).join()).toContain("broken over pages, or lost");
  const slipped = sheet.blocks.map((b) => (b.begins ? { ...b, follows: true } : b));
  expect(faultsOf({ ...sheet, blocks: slipped }).join()).toContain("follows nothing on its page");
});

test("every item of a maker has its block, whole: its number once, in order, with its words and boxes to tick", () => {
  for (const { name, blocks } of sheets) {
    const items = blocks.filter((b) => b.kind === "item");
    const numbers = items.map((_, at) => `Item ${at + 1} of ${items.length}`);
    expect(
      items.map((b) => b.number),
      name,
    ).toEqual(numbers);
    for (const block of items) {
      const parts = new Set(block.parts);
      expect(parts.has("item-head") && parts.has("item-words"), `${name}: ${block.heading}`).toBe(
        true,
      );
      const goesOn = blocks.some((b) => b.kind === "second" && b.number === block.number);
      expect(parts.has("checks") || goesOn, `${name}: ${block.heading}`).toBe(true);
    }
  }
});

test("small items share a page: two pillows one, those that have changed one with a plan, curtains none, and nothing that fits twice on a page stands alone beside its like", () => {
  const sheetOf = (room: string) => sheets.find((s) => s.name.includes(room)) as SheetSeen;
  const bedroom = sheetOf("tidewell/ropewalk-house/guest-bedroom");
  const pages = bedroom.blocks
    .filter((b) => /^(Drapery|Two pillows|Pillow)/.test(b.heading))
    .map((b) => pageOf(b, bedroom.pages));
  expect(pages).toEqual([0, 4, 4]);
  const study = sheetOf("tidewell/gannet-house/study");
  const first = study.blocks.slice(0, 9).map((b) => [b.kind, pageOf(b, study.pages)]);
  expect(first).toEqual([
    ["item", 0],
    ...[1, 2, 3, 4].flatMap((page) => [
      ["item", page],
      ["plan", page],
    ]),
  ]);
  const alone = sheets.flatMap(({ name, blocks, textMm }) =>
    blocks.flatMap((block, at) => {
      const next = blocks[at + 1];
      const single = (b?: BlockSeen, after?: BlockSeen) => b && !b.follows && !after?.follows;
      const small = (b?: BlockSeen) => b !== undefined && b.heightMm < textMm / 2 - 12;
      const both = single(block, next) && single(next, blocks[at + 2]);
      return both && next?.kind !== "last" && small(block) && small(next)
        ? [`${name}: ${block.heading} and ${next?.heading}`]
        : [];
    }),
  );
  expect(alone).toEqual([]);
});

test("no drawing and no plan is made to fit by the page: each is as wide as its stated scale makes it", () => {
  const made = sheets.flatMap(({ name, blocks }) =>
    blocks.flatMap((b) => b.made.map((part) => ({ part, of: `${name}, ${b.heading}` }))),
  );
  expect(made.length).toBeGreaterThan(150);
  expect(made.filter(({ part }) => Math.abs(part - 1) > 0.002)).toEqual([]);
});
