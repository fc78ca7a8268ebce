import fc from "fast-check";
import { expect, test } from "vitest";
import type { ClothFacts } from "../../src/items/itemKind.ts";
import { panelledWallAllowances } from "../../src/items/panelledwall/allowances.ts";
import { layPanels } from "../../src/items/panelledwall/layout.ts";
import { mouldingNeed } from "../../src/items/panelledwall/moulding.ts";
import { makePanelledWall } from "../../src/items/panelledwall/pieces.ts";
import { panelledWallSchema } from "../../src/items/panelledwall/schema.ts";
import { Length } from "../../src/units/length.ts";
import { clothFacts, contextFor, fieldsOf, inUnit, length, wallRun } from "./tradeContext.ts";

const PLAIN = clothFacts({ id: "slub", name: "Slub", usableWidth: length('54"') });
const PRINT = clothFacts({
  id: "fern",
  name: "Fern",
  usableWidth: length('54"'),
  repeat: {
    up: length('24"'),
    across: length('27"'),
    match: "straight",
    fromSelvedge: length('13 1/2"'),
  },
});
const PAPER = clothFacts({ id: "paper", name: "Paper", type: "wallcovering" });
const WINDOW = {
  what: "window" as const,
  fromLeft: length('60"'),
  width: length('36"'),
  foot: length('30"'),
  height: length('48"'),
};

function make(
  raw: Record<string, unknown>,
  openings: (typeof WINDOW)[] = [],
  cards: ClothFacts[] = [],
) {
  const fields = fieldsOf(panelledWallSchema, {
    "panelled-wall": "North",
    at: { wall: "north", "from-left": '0"', height: '6"' },
    size: '124" x 88"',
    panels: "4",
    margin: '4"',
    moulding: '1"',
    "moulding-length": "12 ft",
    ...raw,
  });
  const context = contextFor(panelledWallAllowances, {
    cloths: [PLAIN, PRINT, PAPER, ...cards],
    runs: [wallRun('144"', '108"', openings)],
  });
  return makePanelledWall(fields, context);
}

test("panels are equal, with the same wall between and round them, and fill the wall exactly", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 300, max: 9000 }),
      fc.integer({ min: 300, max: 4000 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 200 }),
      fc.option(fc.integer({ min: 100, max: 1200 }), { nil: null }),
      (w, h, n, m, lower) => {
        const laid = layPanels({
          width: Length.mm(w),
          height: Length.mm(h),
          panels: n,
          margin: Length.mm(m),
          lower: lower === null ? null : Length.mm(lower),
        });
        if (laid === null) {
          expect(w <= m * (n + 1) || h <= (lower === null ? 2 * m : 3 * m + lower)).toBe(true);
          return;
        }
        expect(laid).toHaveLength(n * (lower === null ? 1 : 2));
        const last = laid.at(-1);
        expect(last?.left.plus(last.width).plus(Length.mm(m)).equals(Length.mm(w))).toBe(true);
        expect(last?.top.plus(last.height).plus(Length.mm(m)).equals(Length.mm(h))).toBe(true);
        for (const [a, b] of laid.slice(0, n).entries())
          if (a > 0) {
            const before = laid[a - 1];
            expect(
              b.left
                .minus((before as typeof b).left.plus((before as typeof b).width))
                .equals(Length.mm(m)),
            ).toBe(true);
          }
      },
    ),
    { numRuns: 200 },
  );
});

test("moulding: every piece comes whole from a length, never fewer than the bound, never more than 11/9 of the least and one (D. S. Johnson, 1973, from memory)", () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          length: fc.integer({ min: 20, max: 240 }),
          count: fc.integer({ min: 1, max: 6 }),
        }),
        { minLength: 1, maxLength: 6 },
      ),
      (raw) => {
        const need = mouldingNeed(
          raw.map((x) => ({ length: Length.cm(x.length), count: x.count })),
          Length.cm(240),
          Length.mm(3),
        );
        if (need === null) throw new Error("all pieces are short enough");
        expect(need.lengths).toBeGreaterThanOrEqual(need.atLeast);
        expect(need.lengths).toBeLessThanOrEqual(raw.reduce((n, x) => n + x.count, 0));
        expect(need.lengths * 2400).toBeGreaterThanOrEqual(need.total.toMm());
        // No two lengths are both at most half used: the second would have gone into the first.
        expect(need.lengths).toBeLessThanOrEqual(
          Math.floor((2 * (need.total.toMm() + 3 * raw.reduce((n, x) => n + x.count, 0))) / 2400) +
            1,
        );
      },
    ),
    { numRuns: 200 },
  );
  expect(
    mouldingNeed([{ length: Length.cm(241), count: 1 }], Length.cm(240), Length.mm(3)),
  ).toBeNull();
  // Two of 120 and a saw cut: the second piece needs none beyond it.
  const two = mouldingNeed([{ length: Length.mm(1198), count: 4 }], Length.cm(240), Length.mm(3));
  expect(two?.lengths).toBe(2);
});

test("a wall of four: panels 26 × 80, moulding outside its mitres, cloth the field and a turn-in each edge", () => {
  const made = make({ cloth: "slub", trim: "gimp" });
  expect(made.panels.map((q) => inUnit(q.width, "in"))).toEqual([26, 26, 26, 26]);
  expect(inUnit(made.panels[0]?.height ?? Length.zero, "in")).toBe(80);
  expect(made.need?.pieces.map((x) => [inUnit(x.length, "in"), x.count])).toEqual([
    [80, 8],
    [26, 8],
  ]);
  expect(made.cuts.map((c) => [inUnit(c.width, "in"), inUnit(c.height, "in"), c.count])).toEqual([
    [26 - 2 + 6, 80 - 2 + 6, 4],
  ]);
  // Field 24 x 78, round it 204 in, four times: 22 2/3 yd, up to the quarter.
  expect(made.materials.find((m) => m.what === "gimp")?.amount.valueOf()).toBe(22.75);
  expect(made.cautions).toEqual(["lead-paint", "fire"]);
  expect(make({}).cautions).toEqual(["lead-paint"]);
});

test("a trim that has a card is bought by it, each panel's run with its ends; one in words is the maker's own", () => {
  const braid = clothFacts({ id: "gimp", name: "Flax gimp", type: "trim" });
  const need = (cards: ClothFacts[]) =>
    make({ cloth: "slub", trim: "gimp" }, [], cards).materials.find((m) => /gimp/i.test(m.what));
  // Round a field of 24 x 78, 204 in, and 2 in for its ends, four times: 22.9 yd, up to the quarter.
  expect(need([braid])).toMatchObject({ what: "Flax gimp", cloth: "gimp", by: "studio" });
  expect(need([braid])?.amount.valueOf()).toBe(23);
  expect(need([])).toMatchObject({ what: "gimp", cloth: null, by: "maker" });
});

test("a motif stands in the middle of each panel, level from panel to panel; a wide panel is joined in register", () => {
  const made = make({ cloth: "fern" });
  expect(made.diagnostics.map((d) => d.code)).toEqual(["motif-does-not-fit"]);
  const narrow = make({ cloth: "fern", panels: "5" });
  expect(narrow.diagnostics).toEqual([]);
  expect(narrow.cuts[0]).toMatchObject({
    across: { how: "motif-at" },
    along: { how: "motif-at", joined: 0 },
    mayTurn: false,
  });
  const wide = make({ cloth: "fern", panels: "2" });
  expect(wide.cuts.map((c) => c.across.how)).toEqual(["selvedge", "whole-width", "selvedge"]);
  expect(wide.questions.join(" ")).toContain("whole width in the middle");
});

test("two rows: the lower ones as written, the upper ones what is left", () => {
  const made = make({ lower: '24"' });
  expect([...new Set(made.panels.map((q) => inUnit(q.height, "in")))]).toEqual([88 - 12 - 24, 24]);
  expect(made.panels).toHaveLength(8);
});

test("bad input is told at its line, with what to write", () => {
  for (const [raw, code, key] of [
    [{ rows: "2" }, "panels-not-measured", "rows"],
    [{ rows: "1", lower: '24"' }, "not-of-one-row", "lower"],
    [{ panels: "31" }, "panels-do-not-fit", "panels"],
    [{ panels: "20", moulding: '1 1/2"' }, "panels-do-not-fit", "panels"],
    [{ "moulding-length": "6 ft" }, "moulding-too-short", "moulding-length"],
    [{ cloth: "paper" }, "paper-in-panels", "cloth"],
    [{ cloth: "slub", motif: "centred" }, "no-motif-to-centre", "motif"],
    [{ at: "lane" }, "panelled-without-wall", "at"],
  ] as const) {
    const found = make(raw).diagnostics[0];
    expect(found, code).toMatchObject({ code, keyPath: `items[0].${key}` });
    expect(found?.hint, code).toBeTruthy();
  }
  const over = make({}, [WINDOW]).diagnostics[0];
  expect(over).toMatchObject({ code: "panel-over-opening" });
  // Window 60 to 96 in: panel 2 ends at 60, panel 3 (64 to 90) and panel 4 (94 to 120) meet it.
  expect(over?.message).toContain("Panel 3, 4");
  // Low panels under the sill do not.
  expect(make({ size: '124" x 22"' }, [WINDOW]).diagnostics).toEqual([]);
});

test("inches and centimetres agree exactly; a larger wall never takes less cloth or moulding", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 90, max: 190 }),
      fc.integer({ min: 40, max: 110 }),
      fc.integer({ min: 2, max: 5 }),
      (w, h, n) => {
        const of = (a: string, b: string) =>
          make({ cloth: "slub", size: `${a} x ${b}`, panels: String(n) });
        const inches = of(`${w}"`, `${h}"`);
        const metric = of(`${(w * 254) / 100} cm`, `${(h * 254) / 100} cm`);
        const list = (m: typeof inches) =>
          m.cuts.map((c) => [c.piece, c.width.mm.toFraction(), c.height.mm.toFraction(), c.count]);
        expect(list(metric)).toEqual(list(inches));
        const more = of(`${w + 3}"`, `${h + 3}"`);
        const area = (m: typeof inches) =>
          m.cuts.reduce((sum, c) => sum + c.width.toMm() * c.height.toMm() * c.count, 0);
        expect(area(more)).toBeGreaterThan(area(inches));
        expect(more.figures.mouldingMm ?? 0).toBeGreaterThan(inches.figures.mouldingMm ?? 0);
      },
    ),
    { numRuns: 80 },
  );
});
