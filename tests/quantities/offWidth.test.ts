// A cloth whose width is no whole number of its repeats across: widths are joined where whole repeats end, or the pattern would not meet.
import { expect, test } from "vitest";
import { PROJECT, quantitiesOf, STUDIO_CM } from "./studioOf.ts";

const STUDIO = `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [curtains, blind, coverlet, pelmet, valance, bed-skirt] } }`;

function of(items: string, across = "64 cm", match = "straight", width = "140 cm", came = "") {
  return quantitiesOf({
    studio: STUDIO,
    project: came ? `${PROJECT}\nreceipts: [${came}]` : PROJECT,
    cloths: {
      print: `cloth: Print\nwidth: ${width}\nrepeat: { up: 64 cm, across: ${across}, match: ${match} }\nkind: large-print`,
    },
    rooms: { a: `room: A\nitems:\n${items}` },
  });
}

const figures = (found: ReturnType<typeof of>) => found.items[0]?.made.figures ?? {};
const asked = (found: ReturnType<typeof of>) => found.items[0]?.made.questions.join(" ") ?? "";

const CURTAINS = (pole: number) => `  - curtains: Bay
    cloth: print
    panels: single
    pole: ${pole} cm
    drop: 230 cm
    heading: pinch-pleat
    fullness: 1
`;

test("140 cm of 64 cm repeats give 128 cm from join to join, so that a width more is needed", () => {
  // Two widths join to 2 × 140 - 12 = 268 cm, not to 277: 16 cm of returns and 8 cm of side hems leave 244 cm of pole.
  expect(figures(of(CURTAINS(244))).widths).toBe(2);
  expect(figures(of(CURTAINS(245))).widths).toBe(3);
  expect(figures(of(CURTAINS(245), "70 cm")).widths).toBe(2);
  expect(asked(of(CURTAINS(245)))).toContain("joined where 2 repeats end");
  expect(asked(of(CURTAINS(245), "70 cm"))).not.toContain("repeats end");
});

test("a card that is rounded counts as whole, and cloth of which nothing matches keeps its turning", () => {
  for (const across of ["46.7 cm", "70.2 cm", "140.5 cm"])
    expect(asked(of(CURTAINS(245), across))).not.toContain("repeat across right");
  expect(figures(of(CURTAINS(245), "64 cm", "free")).widths).toBe(2);
});

test("a half-drop shifts by the repeats that lie between two joins", () => {
  const ys = (across: string) =>
    new Set(
      of(CURTAINS(245), across, "half-drop").cloths[0]?.plan.pieces.map((p) => p.y.toMm() % 640),
    );
  // Two columns of 64 cm: level. Three of 45 cm: every second width half a repeat lower.
  expect(ys("64 cm").size).toBe(1);
  expect(ys("45 cm").size).toBe(2);
});

/** Of two neighbours the pattern at the seam lines: where they lie on the cloth, modulo the repeat across. */
function meets(found: ReturnType<typeof of>, left: string, right: string, turning: number) {
  const piece = (name: string) =>
    found.cloths[0]?.plan.pieces.find((p) => p.piece.endsWith(name)) as {
      x: { toMm(): number };
      width: { toMm(): number };
    };
  const from = piece(left);
  const to = piece(right);
  const gap = from.x.toMm() + from.width.toMm() - turning - (to.x.toMm() + turning);
  return Math.abs(gap / 640 - Math.round(gap / 640)) * 640;
}

test.each([
  [
    "a blind",
    "  - blind: B\n    cloth: print\n    width: 170 cm\n    drop: 150 cm\n",
    "middle width",
    1800,
  ],
  [
    "a coverlet",
    "  - coverlet: C\n    cloth: print\n    bed: 120 cm x 200 cm x 60 cm\n    drop: 30 cm\n    motif: as-it-falls\n",
    "whole width",
    1900,
  ],
])("the strips of %s meet its middle in pattern, and cover it", (_what, item, middle, cut) => {
  const found = of(item);
  expect(meets(found, "left strip", middle, 60)).toBeLessThan(0.5);
  expect(meets(found, middle, "right strip", 60)).toBeLessThan(0.5);
  const parts = found.cloths[0]?.plan.pieces.filter((p) => p.height.toMm() > 1000) ?? [];
  expect(parts).toHaveLength(3);
  expect(parts.reduce((sum, p) => sum + p.width.toMm(), 0) - 4 * 60).toBeGreaterThanOrEqual(cut);
});

test("cloth that came narrower than its card has as many repeats across, and is joined at its selvedges", () => {
  const came =
    "{ cloth: print, lot: A1, maker: anna, length: 30 m, width: 129 cm, on: 2026-11-20 }";
  const found = of(CURTAINS(180), "68.5 cm", "straight", "137 cm", came);
  // (180 + 16 + 8) cm of flat width: one join of two widths gives 258 - 3 cm; with one repeat a width it would take three.
  expect(found.cloths[0]?.usableWidth.toMm()).toBe(1290);
  expect(found.cloths[0]?.plan.pieces).toHaveLength(2);
});
