import { expect, test } from "vitest";
import type { Shape } from "../../src/drawing/shape.ts";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import { seatPadKind } from "../../src/items/cushion/seatpad/kind.ts";
import { ITEM_DRAWINGS } from "../../src/items/drawings.ts";
import type { ItemKind, Made } from "../../src/items/itemKind.ts";
import { panelledWallKind } from "../../src/items/panelledwall/kind.ts";
import { armchairKind } from "../../src/items/upholstery/armchair/kind.ts";
import { headboardKind } from "../../src/items/upholstery/headboard/kind.ts";
import { ottomanKind } from "../../src/items/upholstery/ottoman/kind.ts";
import { drawingContext } from "./drawnItems.ts";
import { clothFacts, contextFor, fieldsOf, inUnit, length } from "./tradeContext.ts";

/** Two columns to a width: none of its motifs stands in the middle of it, and a middle with one would be half a width. */
const TWO_COLUMNS = clothFacts({
  id: "two",
  name: "Two",
  usableWidth: length('53"'),
  repeat: {
    up: length('36"'),
    across: length('26 1/2"'),
    match: "half-drop",
    fromSelvedge: length('13 1/4"'),
  },
});
const STRIPE = clothFacts({
  id: "stripe",
  name: "Stripe",
  usableWidth: length('54"'),
  repeat: { up: length('1"'), across: length('3"'), match: "free", fromSelvedge: null },
});
const ONE_COLUMN = clothFacts({
  id: "one",
  name: "One",
  usableWidth: length('54"'),
  repeat: {
    up: length('18"'),
    across: length('27"'),
    match: "straight",
    fromSelvedge: length('27"'),
  },
});

function made(kind: ItemKind<never, never>, raw: Record<string, unknown>) {
  const fields = fieldsOf(kind.schema, raw) as never;
  const context = contextFor(kind.allowances, { cloths: [TWO_COLUMNS, ONE_COLUMN, STRIPE] });
  const item = kind.make(fields, context) as unknown as Made;
  const drawn = ITEM_DRAWINGS.find((d) => d.kind === kind.kind);
  if (!drawn) throw new Error(`no drawing of ${kind.kind}`);
  const words = drawn.sheet(fields, item as never, drawingContext(context));
  const views = drawn.workshop(fields, item as never, drawingContext(context));
  const lines = words.groups.flatMap((g) => g.lines).map((l) => l.replace(/\s/g, " "));
  const checks = words.checks.map((c) => c.text);
  const placeOf = (piece: string) => {
    const along = item.cuts.find((c) => c.piece === piece)?.along;
    return along?.how === "motif-at" ? inUnit(along.aboveFoot, "in") : null;
  };
  return { item, lines, checks, views, placeOf, signs: words.signs };
}

const lozenges = (shapes: readonly Shape[]): { x: number; y: number }[] =>
  shapes.flatMap((s) =>
    s.shape === "group"
      ? lozenges(s.children)
      : s.shape === "sign" && s.sign === "lozenge"
        ? [{ x: s.x, y: s.y }]
        : [],
  );

// Geometry, no outside source: what is seen of a piece lies between what is sewn, tucked in or pulled round at its foot and at its head.

test("on a loose cover the motif stands in the middle of what is seen, not of what is cut with its tuck-in", () => {
  const chair = made(armchairKind as never, {
    armchair: "Slipper",
    cloth: "one",
    cover: "loose",
    size: '27" x 29" x 31"',
    pieces: [
      { piece: "inside-back", size: '24" x 21"', centred: "yes" },
      { piece: "seat", size: '24" x 23"', centred: "yes" },
    ],
  });
  // The back tucks in at its foot: seam 1 + tuck-in 6 + half of 21. The seat tucks in at its head, under the back: seam 1 + half of 23.
  expect(chair.placeOf("inside back")).toBeCloseTo(17.5, 6);
  expect(chair.placeOf("seat")).toBeCloseTo(12.5, 6);
  expect(chair.lines).toContain(
    "Motif in the middle of what is seen of A, 17 1/2″ above its cut foot; of B, 12 1/2″.",
  );
  const pieces = chair.views.find((v) => v.title === "Pieces as cut");
  // Drawn from the head down: 29 - 17 1/2, and 31 - 12 1/2.
  expect(
    lozenges(pieces?.shapes ?? [])
      .map(({ y }) => Math.round((y / 25.4) * 100) / 100)
      .sort((a, b) => a - b),
  ).toEqual([11.5, 18.5]);
});

test("the panel of a bordered headboard is sewn at its head and pulled round at its foot", () => {
  const board = made(headboardKind as never, {
    headboard: "End",
    cloth: "one",
    size: '39" x 2 1/2" x 29"',
    border: '4"',
  });
  // Edge 2 1/2 + tack-off 1 3/4 at the foot, and half of the 25 that are seen.
  expect(board.placeOf("panel")).toBeCloseTo(4.25 + 12.5, 6);
});

test("a headboard without a border and an ottoman's top are alike at both ends", () => {
  const board = made(headboardKind as never, {
    headboard: "End",
    cloth: "one",
    size: '39" x 3" x 29"',
  });
  expect(board.placeOf("face")).toBeCloseTo(19.25, 6);
  expect(board.lines).toContain("Motif in the middle of A.");
  const stool = made(ottomanKind as never, { ottoman: "S", cloth: "one", size: '24" x 20" x 17"' });
  expect(stool.placeOf("top")).toBeCloseTo(10.5, 6);
});

test.each([
  [headboardKind, { headboard: "King", size: '78 1/2" x 3" x 31"' }, "of A."],
  [
    panelledWallKind,
    { "panelled-wall": "West", size: '168" x 108"', panels: "2", "moulding-length": "10 ft" },
    "of each panel.",
  ],
  [
    cushionKind,
    { cushion: "Bench", size: '71" x 18"', join: "both-sides" },
    "of the face, their tops up.",
  ],
  [
    seatPadKind,
    { "seat-pad": "Bench", size: '71" x 18"', join: "both-sides" },
    "of the face, their tops up.",
  ],
])(
  "where the gap between two motifs stands in the middle, words and drawing say so: case %#",
  (kind, raw, where) => {
    const item = made(kind as never, { cloth: "two", ...raw });
    expect(item.item.questions.some((q) => q.includes("has the gap between two there"))).toBe(true);
    expect(item.lines).toContain(`The gap between two motifs in the middle ${where}`);
    expect(item.lines.some((l) => /motif in (the|its) middle/i.test(l))).toBe(false);
    expect([...item.checks, ...item.signs].some((l) => /motif in the|Lozenge/.test(l))).toBe(false);
    expect(item.views.flatMap((v) => lozenges(v.shapes))).toEqual([]);
  },
);

test("a whole width and one strip that cannot have a motif in their middle are asked about, not drawn with one", () => {
  // 88 in as cut: for a motif 44 from its left edge the first width would begin 22 1/4 in the cloth and be 30 3/4 wide, and its strip
  // 88 - 30 3/4 + 1 = 58 1/4, wider than the cloth: so a whole width is taken.
  const board = made(headboardKind as never, {
    headboard: "King",
    cloth: "two",
    size: '78 1/2" x 3" x 31"',
    join: "one-side",
  });
  const motif = board.lines.some((l) => l.startsWith("Motif in the middle"));
  const asked = board.item.questions.some((q) => q.includes("no motif stands in its middle"));
  expect([motif, asked]).toEqual([false, true]);
});

test.each([
  ["the face", cushionKind, { cushion: "Square", size: '20" x 20"' }],
  ["the face", cushionKind, { cushion: "Roll", form: "bolster", size: '30" x 8"' }],
  ["the face", seatPadKind, { "seat-pad": "Pad", size: '17" x 16"' }],
  ["A", headboardKind, { headboard: "End", size: '39" x 3" x 30"' }],
])(
  "a stripe has no top: the sheet says which one stands in the middle of %s (case %#)",
  (where, kind, raw) => {
    const item = made(kind as never, { cloth: "stripe", ...raw });
    // Half of its repeat of 3 in, where the card does not say.
    expect(item.lines).toContain(
      `Stripe in the middle of ${where}: the one whose middle lies 1 1/2″ from the left selvedge, or its like.`,
    );
    expect(item.lines.join(" ")).not.toMatch(/motif in the middle/i);
  },
);

test("on the drawing of a pad the gap in its middle is named, not called as it falls", () => {
  const pad = made(seatPadKind as never, {
    "seat-pad": "Bench",
    cloth: "two",
    size: '71" x 18"',
    join: "both-sides",
  });
  const words = pad.views.flatMap((v) =>
    v.shapes.flatMap((s) => (s.shape === "words" ? [s.text] : [])),
  );
  expect(words).toContain("gap in the middle");
  expect(words).not.toContain("as it falls");
});
