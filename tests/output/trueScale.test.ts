import { readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { getDocument, type PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, buildStudio } from "./demo.ts";
import { geometryOf, type PaperBox } from "./geometry.ts";

// Read back from the finished PDF by pdf.js, which has no part in the making.

const INCH = 25.4;
let demo: Built;
let board: PDFDocumentProxy;

beforeAll(async () => {
  demo = await buildStudio();
  const data = await readFile(join(demo.out, "client/gannet-house/dining-room/index.pdf"));
  board = await getDocument({ data: new Uint8Array(data), verbosity: 0 }).promise;
});
afterAll(async () => {
  await board?.loadingTask.destroy();
  await demo?.remove();
});

/** The page whose text holds all of these words. */
async function pageWith(...words: readonly string[]) {
  for (let at = 1; at <= board.numPages; at++) {
    const page = await board.getPage(at);
    const { items } = await page.getTextContent();
    const text = items.map((one) => ("str" in one ? one.str : "")).join(" ");
    if (words.every((w) => text.includes(w))) return { page, items, text };
  }
  throw new Error(`no page with ${words.join(", ")}`);
}

/** Within a tenth of a millimetre in a hundred. */
function has(paths: readonly PaperBox[], width: number, height: number): boolean {
  const near = (is: number, should: number): boolean => Math.abs(is - should) <= should * 0.001;
  return paths.some((p) => near(p.width, width) && near(p.height, height));
}

test("a wall drawn at one sixteenth has its true length and height, within 0.1 mm in 100", async () => {
  const { page } = await pageWith("The north wall", "one sixteenth");
  const { paths } = await geometryOf(page);
  // 17 ft 2 in by 8 ft 10 in, as the room's file says.
  expect(has(paths, (206 * INCH) / 16, (106 * INCH) / 16)).toBe(true);
  // The stove, 32 in wide and 72 in high.
  expect(paths.some((p) => Math.abs(p.width - (32 * INCH) / 16) < 0.06)).toBe(true);
  expect(has(paths, (206 * INCH) / 16.05, (106 * INCH) / 16.05)).toBe(false);
});

test("the bar of four feet is four feet at the scale that the words say", async () => {
  const { page } = await pageWith("The north wall", "one sixteenth");
  const { paths } = await geometryOf(page);
  expect(has(paths, (12 * INCH) / 16, 1.3)).toBe(true);
});

test("on the scale page a repeat is as long as its ruler says, and the rulers are true", async () => {
  const { page } = await pageWith("Large, middling, small", "one fifth");
  const { paths, pictures } = await geometryOf(page);
  // The ruler's line is as long as the lengths, 148 mm on tabloid, with the first tick of 3.2 mm.
  expect(paths.some((p) => Math.abs(p.height - 148) < 0.15 && Math.abs(p.width - 3.2) < 0.05)).toBe(
    true,
  );
  // Vestry repeats after 13 1/2 in; its tile at one fifth, a hair oversize (0.02 mm), is so high.
  const tile = (13.5 * INCH) / 5 + 0.02;
  expect(pictures.some((p) => Math.abs(p.height - tile) < tile * 0.004)).toBe(true);
});

test("swatches stand at 300 pixels an inch or at the photograph's own, and none is enlarged", async () => {
  const { page } = await pageWith("Dining room", "We ask you to decide");
  const { pictures } = await geometryOf(page);
  const cards = [
    "pomander",
    "vestry",
    "turnstile",
    "hayrick",
    "caraway",
    "chaff",
    "sorrel",
    "fallow",
    "bellwether",
  ];
  const own: number[] = [];
  const content = resolve(import.meta.dirname, "../../content/cloths");
  for (const id of cards) {
    const card = await readFile(join(content, `${id}.md`), "utf8");
    const [, file = "", inches = ""] =
      /photo: \{ file: ([\w.-]+), shows: ([\d ./]+)"/.exec(card) ?? [];
    const { width = 0 } = await sharp(join(content, file)).metadata();
    const shown = inches.split(" ").reduce((sum, part) => {
      const [a = 0, b = 1] = part.split("/").map(Number);
      return sum + a / b;
    }, 0);
    // At one third of its true size a photograph has three times its pixels an inch.
    own.push((width / shown) * 3);
  }
  expect(pictures.length).toBeGreaterThanOrEqual(10);
  for (const p of pictures) {
    const isPhotographs = own.some((ppi) => ppi < 300 && Math.abs(p.ppi / ppi - 1) < 0.02);
    expect(p.ppi > 296 || isPhotographs, `${Math.round(p.ppi)} ppi, ${p.width.toFixed(1)} mm`).toBe(
      true,
    );
    expect(p.ppi).toBeLessThan(320);
  }
});

test("a board is read in order: title, words, what is asked, the mix with its main cloth first, the strip, small print", async () => {
  const { text } = await pageWith("Dining room", "We ask you to decide");
  const places = [
    "Dining room",
    "Everything in this room was on",
    "We ask you to decide",
    "Pomander",
    "Hayrick",
    "What you will see",
    "Cloths are shown at one third",
  ].map((words) => text.indexOf(words));
  expect(places.every((p) => p >= 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test("the outline names the document and every sheet, and the proposal is under 12 MB", async () => {
  const outline = JSON.stringify(await board.getOutline());
  for (const title of [
    "Dining room",
    "Large, middling, small",
    "The north wall",
    "Where it goes",
    "In gray",
  ])
    expect(outline).toContain(title);
  const proposal = await readFile(join(demo.out, "client/gannet-house/proposal.pdf"));
  expect(proposal.length).toBeLessThan(12e6);
});
