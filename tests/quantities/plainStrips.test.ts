import { expect, test } from "vitest";
import { quantitiesOf } from "./studioOf.ts";

const KINDS: readonly (readonly [string, string])[] = [
  ["blind", "    width: 160 cm\n    drop: 150 cm\n    mount: outside\n"],
  [
    "valance",
    "    board: 120 cm\n    heading: pencil-pleat\n    fullness: 1.3\n    depth: 40 cm\n",
  ],
  ["pelmet", "    board: 160 cm\n    depth: 40 cm\n"],
];
const WIDTH_MM = 1370;
const COUNT = 3;

function planOf(kind: string, rest: string, more = "") {
  const { cloths, diagnostics } = quantitiesOf({
    cloths: { c: `cloth: C\nwidth: ${WIDTH_MM} mm${more}` },
    rooms: {
      a: `room: A\nheight: 280 cm\nitems:\n  - ${kind}: Bay\n    cloth: c\n    count: ${COUNT}\n${rest}`,
    },
  });
  expect(diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  const plan = cloths.find((c) => c.cloth === "c")?.plan;
  if (!plan) throw new Error("no plan");
  return { plan, strips: plan.pieces.filter((p) => p.piece.includes("strip")) };
}

// Geometry, no outside source: a row of the cloth holds as many strips as go into its width.
test.each(KINDS)("strips of three plain ones lie side by side: %s", (kind, rest) => {
  const { plan, strips } = planOf(kind, rest);
  expect(strips).toHaveLength(2 * COUNT);
  const [one] = strips;
  const aRow = Math.floor(WIDTH_MM / (one?.width.toMm() ?? 0));
  expect(aRow).toBeGreaterThan(2);
  const rows = COUNT + Math.ceil((2 * COUNT) / aRow);
  expect(plan.length.toMm()).toBeCloseTo(rows * (one?.height.toMm() ?? 0), 6);
});

test.each(KINDS)(
  "strips of a pattern join at the selvedge that faces the middle: %s",
  (kind, rest) => {
    // One whose repeat nobody has said, likewise.
    for (const more of ["\nrepeat: { up: 10 cm, across: 137 cm }", "\nkind: large-print"]) {
      const { strips } = planOf(kind, rest, more);
      expect(strips).toHaveLength(2 * COUNT);
      for (const { piece, x, width } of strips)
        expect(piece.includes("left") ? x.toMm() + width.toMm() : x.toMm()).toBeCloseTo(
          piece.includes("left") ? WIDTH_MM : 0,
          6,
        );
    }
  },
);
