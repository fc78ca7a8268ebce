import fc from "fast-check";
import { expect, test } from "vitest";
import { clothSpots } from "../../src/documents/room/clothSpots.ts";
import type { LeaderLabel } from "../../src/documents/room/leaderRoutes.ts";
import { placeLeaders } from "../../src/documents/room/leaders.ts";
import { OPENING, seenPieces } from "../../src/documents/room/seenPieces.ts";
import type { StandingItem } from "../../src/documents/room/standingItem.ts";
import { rect } from "../../src/drawing/paths.ts";

// The rules are the project's own: labels clear of each other, no leader through another's name, none over another piece where
// there is a way around it.

const thing = (id: string, left: number, right: number): LeaderLabel => ({
  id,
  name: id,
  words: "two pillows",
  left,
  right,
  own: new Set([id]),
  beneath: new Set(),
  spotAt: (x: number) => (x > left && x < right ? 1200 : null),
});

test("a leader stands on its own thing, and its label on its leader", () => {
  const things = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 4500 }), fc.integer({ min: 300, max: 2000 })),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(things, (all) => {
      const labels = all.map(([left, width], at) => thing(`Cloth${at}`, left, left + width));
      const placed = placeLeaders(labels, { scale: 1 / 16, x: 20, y: 60 }, 200, 420, null);
      expect(placed.labels).toHaveLength(labels.length);
      for (const label of placed.labels) {
        const own = labels.find((l) => l.name === label.lines[0]);
        const px = label.x - 1.2;
        expect(px).toBeGreaterThanOrEqual(20 + (own?.left ?? 0) / 16);
        expect(px).toBeLessThanOrEqual(20 + (own?.right ?? 0) / 16);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});

test("a picture above a sofa with cushions on it: four names that share no place, and no leader through a name", () => {
  // As on the demo's study: a sofa 76 in wide, a picture above it, three groups of cushions.
  const labels = [
    thing("Harbor", 600, 1100),
    thing("Sofa", 250, 2200),
    thing("Stripe", 350, 1000),
    thing("Ikat", 650, 1050),
    thing("Ticking", 1150, 1900),
  ];
  const { labels: placed } = placeLeaders(labels, { scale: 1 / 16, x: 80, y: 60 }, 200, 420, null);
  for (const a of placed)
    for (const b of placed) {
      if (a === b) continue;
      if (a.y === b.y) expect(Math.abs(a.x - b.x)).toBeGreaterThanOrEqual(18);
      // A lower label's leader passes to the left of an upper one's text, or beyond its end.
      if (a.y > b.y) expect(a.x < b.x || a.x > b.x + 18).toBe(true);
    }
});

const SCALE = 12;
const SHEET = { scale: 1 / SCALE, x: 100, y: 30 };
const WALL = { widthMm: 3450, heightMm: 2490 };

function piece(id: string, x: number, y: number, width: number, height: number): StandingItem {
  return {
    item: { record: { id }, made: {} } as never,
    x,
    y,
    width,
    height,
    front: 0,
    shapes: [
      {
        shape: "path",
        d: rect(x, y, width, height),
        fill: { surface: `${id}/face`, x: 0, y: 0 },
        pen: "outline",
      },
    ],
  };
}

/** The lines of leaders as they are drawn: from a dot sideways to a turn, and down. */
function linesOf(svg: string): { x: number; y: number; turn: number }[] {
  const drawn = /d="M([\d.]+) ([\d.]+)(?:H([\d.]+))?V[^"]+" fill="none" stroke="#23282e"/g;
  return [...svg.matchAll(drawn)].map(([, x = "", y = "", turn = x]) => ({
    x: Number(x),
    y: Number(y),
    turn: Number(turn),
  }));
}

/** A label for each thing that is seen. */
function labelsOf(
  items: readonly StandingItem[],
  rests: Readonly<Record<string, readonly string[]>> = {},
): LeaderLabel[] {
  return [...clothSpots(items, () => () => true, 0.9 * SCALE)].map(([id, places]) => ({
    id,
    name: id,
    words: "",
    ...places,
    own: new Set([id]),
    beneath: new Set(rests[id] ?? []),
  }));
}

/** Leaders over a drawn wall, and what each runs over, by its name. */
function runsOver(
  items: readonly StandingItem[],
  rests: Readonly<Record<string, readonly string[]>> = {},
  wall: unknown = null,
) {
  const pieces = seenPieces(items, wall as never, WALL, SCALE);
  const { svg, labels: placed } = placeLeaders(labelsOf(items, rests), SHEET, 250, 420, pieces);
  const over = new Map<string, Set<string>>();
  for (const { x, y, turn } of linesOf(svg)) {
    const name = placed.find((l) => Math.abs(l.x - 1.2 - turn) < 0.01)?.lines[0] ?? "";
    const met = new Set<string>();
    const see = (px: number, py: number): void => {
      const id = pieces.at([(px - SHEET.x) * SCALE, (py - SHEET.y) * SCALE]);
      if (id !== null && id !== name) met.add(id);
    };
    for (let part = 0; part <= 1; part += 1 / 200) see(x + (turn - x) * part, y);
    for (let py = y; py < 240; py += 0.5) see(turn, py);
    over.set(name, met);
  }
  return over;
}

// As on the demo's study: a day bed with cushions, a picture above its middle, a door beside it.
const BED = piece("bed", 250, 1730, 1930, 700);
const CUSHIONS = [
  piece("left", 350, 1500, 600, 600),
  piece("small", 1090, 1770, 400, 330),
  piece("right", 1250, 1620, 850, 480),
];
const PICTURE = piece("picture", 960, 760, 620, 460);
const RESTS = { left: ["bed"], small: ["bed"], right: ["bed"] };

test("the line of a picture above a sofa leaves it sideways and falls beside the sofa, over no other piece", () => {
  const over = runsOver([PICTURE, BED, ...CUSHIONS], RESTS);
  expect([...over.keys()].sort()).toEqual(["bed", "left", "picture", "right", "small"]);
  expect([...(over.get("picture") ?? ["none"])]).toEqual([]);
});

test("what lies on a sofa has its line over the sofa and over nothing else", () => {
  const over = runsOver([PICTURE, BED, ...CUSHIONS], RESTS);
  for (const id of ["left", "right", "small"])
    expect([...(over.get(id) ?? [])], id).toEqual(["bed"]);
  // Nothing is won by going round: it falls straight.
  expect([...(over.get("bed") ?? ["none"])]).toEqual([]);
});

test("a line runs rather past a door than over a sofa, and over the sofa where it fills the wall", () => {
  const length = (mm: number) => ({ toMm: () => mm });
  const opening = {
    fromLeft: length(2300),
    width: length(900),
    foot: length(0),
    height: length(2050),
  };
  const beside = runsOver([PICTURE, piece("bed", 0, 1730, 2200, 700)], {}, { openings: [opening] });
  for (const id of beside.get("picture") ?? []) expect(id).toBe(OPENING);
  const filled = runsOver([PICTURE, piece("bed", 0, 1730, 3450, 700)]);
  expect([...(filled.get("picture") ?? [])]).toEqual(["bed"]);
});

test("no line runs over another's, whatever hangs above what stands", () => {
  const heights = fc.integer({ min: 300, max: 1000 });
  const box = fc.tuple(
    fc.integer({ min: 50, max: 2600 }),
    heights,
    fc.integer({ min: 250, max: 700 }),
  );
  fc.assert(
    fc.property(fc.array(box, { minLength: 1, maxLength: 3 }), (hung) => {
      const items = [
        BED,
        ...hung.map(([x, y, w], at) => piece(`p${at}`, x, y, Math.min(w, 3400 - x), 300)),
      ];
      const pieces = seenPieces(items, null, WALL, SCALE);
      const { svg, crowded } = placeLeaders(labelsOf(items), SHEET, 250, 420, pieces);
      if (crowded) return;
      const lines = linesOf(svg);
      for (const a of lines)
        for (const b of lines) {
          if (a === b) continue;
          const within = b.turn > Math.min(a.x, a.turn) && b.turn < Math.max(a.x, a.turn);
          expect(within && b.y <= a.y).toBe(false);
        }
    }),
    { numRuns: 60, seed: 20261126 },
  );
});
