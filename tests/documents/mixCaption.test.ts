import { expect, test } from "vitest";
import type { HungPiece } from "../../src/documents/board/hangPiece.ts";
import { type Captioned, mixCaption } from "../../src/documents/board/mixCaption.ts";
import { textWidthMm } from "../../src/drawing/words.ts";

// A caption keeps to the channel between its piece and what hangs below: the house's own rule, common practice, no source.
const upper: HungPiece = { id: "a", x: 0, y: 0, width: 25, height: 80, row: "upper" };
const next: HungPiece = { id: "b", x: 31, y: 0, width: 60, height: 80, row: "upper" };
const below: HungPiece = { id: "c", x: 6, y: 98, width: 40, height: 25, row: "lower" };
const NAME = "Promenade Deckchair Awning Stripe in Clay, Straw and Deep Ink";
const of = {
  x: 0,
  y: 0,
  swatch: { name: NAME, kind: "stripe", photo: { showsMm: 355 }, colours: [] },
  role: { role: "geometric" },
  isPaper: false,
  awaited: false,
  places: ["sofa", "two pillows", "welts"],
  language: "en-US",
  fieldWidth: 280,
  pieceId: "p",
  closeUp: null,
} as unknown as Captioned;

/** Lines that a text takes in a width at an em of so many millimetres, on the wide side. */
const lines = (text: string, width: number, em: number): number =>
  Math.ceil((textWidthMm(text, em) * 0.88) / width);

test("a long name over a piece that hangs close below is cut, and its role and places have one line", () => {
  const caption = mixCaption(upper, [upper, next, below], of);
  expect(caption.small).toBe(true);
  expect(caption.name).toMatch(/^Promenade Deckchair.*…$/);
  expect(lines(caption.name, caption.width, 3.5)).toBeLessThanOrEqual(3);
  expect(lines(caption.role, caption.width, 3.5)).toBe(1);
});

test("where nothing hangs below, the same name and all places stand in full", () => {
  const caption = mixCaption(upper, [upper, next], of);
  expect(caption.name).toBe(NAME);
  expect(caption.role).toMatch(/sofa, two pillows and welts$/);
});
