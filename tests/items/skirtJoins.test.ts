import { expect, test } from "vitest";
import { bedSkirtDrawing } from "../../src/items/bedskirt/drawing.ts";
import { bedSkirtSchema } from "../../src/items/bedskirt/schema.ts";
import { bedSkirt, cloth } from "./bedTableMade.ts";
import { drawingContext } from "./drawnItems.ts";
import { contextFor, fieldsOf, inUnit, length } from "./tradeContext.ts";

const TAILORED = { style: "tailored", bed: '61" x 79" x 25"', drop: '15"' };
const STRIPE = cloth('56"', {
  repeat: { up: null, across: length('3 1/2"'), match: "free", fromSelvedge: null },
} as never);

function sheetOf(raw: Record<string, unknown>, print = cloth('53"')) {
  const made = bedSkirt(raw, {}, print);
  const fields = fieldsOf(bedSkirtSchema, { "bed-skirt": "Bed", cloth: "print", ...raw });
  const context = drawingContext(contextFor({}, { cloths: [print] }));
  const sheet = bedSkirtDrawing.sheet(fields as never, made as never, context);
  const flat = bedSkirtDrawing
    .workshop(fields as never, made as never, context)
    .find((view) => view.title.startsWith("Flat"));
  const seams = (flat?.shapes ?? []).filter((s) => s.shape === "path" && s.pen === "seam").length;
  const lines = sheet.groups.flatMap((g) => g.lines).map((l) => l.replace(/\s/g, " "));
  return { made, lines, flat, seams };
}
const strips = (made: ReturnType<typeof bedSkirt>) =>
  made.cuts
    .filter((c) => c.surface === "face")
    .map((c) => [c.piece, inUnit(c.height, "in"), c.count]);

// Arithmetic by hand; that joins of a flat front lie in its pleats, and never in its middle, is common practice, no source.

test("a flat side of two widths has one of them split, a half at each end, so that no join stands in its middle", () => {
  const { made, lines, seams } = sheetOf({ ...TAILORED, "split-corners": "yes" });
  // 79 + 2 hems = 81 of 2 widths of 53; split they have two joins of 1: 106 - 2 - 81 = 23 over. The foot 61 + 2: 104 - 63 = 41.
  expect(strips(made)).toEqual([
    ["skirt, left, width", 18, 2],
    ["skirt, foot, width", 18, 2],
    ["skirt, right, width", 18, 2],
  ]);
  expect(lines).toContain(
    "left: 79″ finished from 81″ flat, joined 104″; trim 23″ off after joining, half at each end.",
  );
  expect(lines.find((l) => l.startsWith("foot:"))).toContain("trim 41″ off");
  expect(lines).toContain(
    "One width of left, foot, right is split, a half at each end, so that no join stands in the middle.",
  );
  expect(seams).toBe(2);
});

test("a tailored skirt without pleats does not speak of any", () => {
  const { lines } = sheetOf({ ...TAILORED, "split-corners": "yes" });
  expect(lines).toContain("Tailored: flat, without pleats.");
  expect(lines.some((l) => l.includes("pleat at each corner"))).toBe(false);
  expect(sheetOf(TAILORED).lines.some((l) => l.includes("a pleat at each corner"))).toBe(true);
});

test("a width is not split where the join more would leave the side too short", () => {
  // 103 + 2 hems = 105, which two widths of 53 with one join are to the inch.
  const { lines, seams } = sheetOf({ ...TAILORED, bed: '61" x 103" x 25"', sides: ["left"] });
  expect(lines).toContain("103″ finished from 105″ flat, joined 105″.");
  expect(seams).toBe(1);
});

test("run sideways, a flat side is one strip, and sides with a corner between them are joined in its pleat", () => {
  const sideways = { ...TAILORED, bed: '39 1/2" x 76" x 22"', drop: '13"', railroad: "yes" };
  const open = sheetOf(
    { ...sideways, "split-corners": "yes", sides: ["left", "foot"] },
    STRIPE,
  ).made;
  // 76 + 2 and 39 1/2 + 2 for side hems.
  expect(strips(open)).toEqual([
    ["skirt, left, strip", 78, 1],
    ["skirt, foot, strip", 41.5, 1],
  ]);
  expect(open.questions.some((q) => q.includes("breaks off where two are joined"))).toBe(false);
  const { made, lines } = sheetOf({ ...sideways, sides: ["left", "foot"], count: "2" }, STRIPE);
  // Hem 1, half of the 18 pleat, turning 1/2: 76 + 10 1/2 and 39 1/2 + 10 1/2; joined 136 1/2 - 1 = 115 1/2 + 18 + 2.
  expect(strips(made)).toEqual([
    ["skirt, strip 1 of 2", 86.5, 2],
    ["skirt, strip 2 of 2", 50, 2],
  ]);
  expect(lines).toContain(
    "Tailored: flat, a pleat at each corner; strips joined in the middle of the pleats.",
  );
  expect(lines).toContain("115 1/2″ finished from 135 1/2″ flat, joined 135 1/2″.");
  // Three strips of 16 lie across 56: 86 1/2, 86 1/2 and 50 in one row, 50 in the next.
  const handbook = made.handbook.find((h) => h.cloth === "print");
  expect(handbook && inUnit(handbook.length, "in")).toBe(136.5);
});

test("plain cloth is run sideways of itself only where rows of such strips take no more than a quarter more than widths", () => {
  const plain = cloth('54"', { mayTurn: true });
  const queen = (drop: string) =>
    strips(bedSkirt({ style: "tailored", bed: '60" x 80" x 30"', drop }, {}, plain));
  // Cut 18 deep three strips lie side by side: 90 1/2 against 5 widths of 18, 90.
  expect(queen('15"')).toEqual([
    ["skirt, strip 1 of 3", 90.5, 1],
    ["skirt, strip 2 of 3", 79, 1],
    ["skirt, strip 3 of 3", 90.5, 1],
  ]);
  // Cut 22 deep two do: 90 1/2 + 79 against 5 × 22, 110.
  expect(queen('19"')).toEqual([["skirt, width", 22, 5]]);
});

test("a side that one width is enough for is cut to what it needs, and nothing is trimmed off it", () => {
  const { made, lines, flat } = sheetOf({
    ...TAILORED,
    "split-corners": "yes",
    bed: '48" x 50" x 25"',
  });
  expect(made.cuts.filter((c) => c.surface === "face").map((c) => inUnit(c.width, "in"))).toEqual([
    52, 50, 52,
  ]);
  expect(lines).toContain("left: 50″ finished from 52″ flat.");
  expect(flat?.title).toBe("Flat");
});
