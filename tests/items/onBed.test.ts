import { expect, test } from "vitest";
import { floorPlanShapes } from "../../src/documents/room/floorPlan.ts";
import { itemsByWall } from "../../src/documents/room/placeItems.ts";
import type { Shape } from "../../src/drawing/shape.ts";
import { curtainsDrawing } from "../../src/items/curtains/drawing.ts";
import type { FittingLine } from "../../src/items/itemDrawing.ts";
import type { HangsOn } from "../../src/items/itemKind.ts";
import { valanceDrawing } from "../../src/items/valance/drawing.ts";
import { STUDIO_INCHES } from "../quantities/studioOf.ts";
import { codesOf, roomOf } from "../room/roomOf.ts";

// Hangings of a bed with posts: curtains at its sides, a valance round its tester. Sums by hand from the rules of curtains; that they
// return to no wall, and that a valance goes round three sides in one, is common practice, no source.

const context = {
  units: "inches",
  language: "en-US",
  cloth: () => null,
  object: () => null,
} as const;

const curtains = (title: string, more: string): string => `  - curtains: ${title}
    cloth: moss
    pole: 60"
    pole-height: 84"
    hangs-from: track
    heading: pencil-pleat
    to: floor
    ${more}
`;
const AT = (side: string) => `at: { on: four-poster, side: ${side} }`;

function furnished(items: string) {
  const room = roomOf(
    `room: R\nheight: 100"\nfloor: 200" x 160"\nitems:\n  - object: four-poster\n    at: { wall: north, from-left: 70" }\n${items}`,
    {
      studio: STUDIO_INCHES,
      objects: { "four-poster": 'object: Oak bed\nshape: bed\nsize: 60" x 80" x 50"' },
      cloths: { moss: 'cloth: Moss\nwidth: 54"\nkind: plain' },
    },
  );
  const item = (id: string) => {
    const found = room.items.find(({ record }) => record.id === id);
    if (!found) throw new Error(`no ${id}: ${codesOf(room).join()}`);
    return found;
  };
  return { room, item };
}

const fitterReads = (line: FittingLine | null) => ({
  lines: line?.groups.map((g) => `${g.heading}: ${g.lines.join(" ")}`) ?? [],
  checks: line?.checks.map((c) => c.text) ?? [],
  asks: line?.questions ?? [],
  mark: line?.mark,
});
/** What the fitter reads by, of what hangs on the bed at this side. */
const fittingOn = (side: HangsOn["side"]) => ({
  ...context,
  window: null,
  box: null,
  on: null,
  hangsOn: { title: "Oak bed", side },
  assumed: [],
});

test("curtains at a bed return to no wall: 60 in of track at 2 1/4 and four side hems, and nothing is asked of a bracket", () => {
  const { item } = furnished(
    curtains("Foot", AT("foot")) + curtains("Wall", "at: { wall: south }"),
  );
  const { made } = item("curtains-foot");
  const said = made.working.find((w) => w.what === "Coverage");
  // 60 + 3 overlap, where on a wall 2 x 3 1/2 in of returns come to it (the usual values in inches).
  expect(said?.result).toBe("63″");
  expect(item("curtains-wall").made.working.find((w) => w.what === "Coverage")?.result).toBe("70″");
  expect(made.questions.join(" ")).not.toMatch(/return|bracket|side of/);
  expect(item("curtains-wall").made.questions.join(" ")).toMatch(/return to the wall/);
});

test("at which side they hang is asked where it is not said; of what lies on a bed no side is said", () => {
  const { room, item } = furnished(
    `${curtains("Foot", "at: { on: four-poster }")}  - cushion: Square\n    at: { on: four-poster, side: left }\n    cloth: moss\n    size: 20" x 20"\n`,
  );
  expect(item("curtains-foot").made.questions.join(" ")).toContain(
    "At which side of Oak bed do these curtains hang?",
  );
  expect(codesOf(room)).toContain("side-of-no-bed");
});

test("their sheet and their fitter are told of the bed, of no wall and of no window", () => {
  const { item } = furnished(curtains("Foot", AT("foot")) + curtains("Head", AT("head")));
  const read = (id: string, side: HangsOn["side"]) => {
    const { record, made } = item(id);
    const fields = record.fields as never;
    return {
      sheet: curtainsDrawing.sheet(fields, made as never, context),
      from: curtainsDrawing.workshop(fields, made as never, context)[1]?.shapes,
      ...fitterReads(curtainsDrawing.fitting?.(fields, made as never, fittingOn(side)) ?? null),
    };
  };
  const foot = read("curtains-foot", "foot");
  const sheet = foot.sheet.groups.flatMap((g) => g.lines).join(" ");
  expect(sheet).toContain("On Oak bed, at its foot.");
  expect(JSON.stringify(foot.from)).toContain("bed at the top");
  const all = [sheet, ...foot.sheet.checks.map((c) => c.text), ...foot.lines, ...foot.asks].join();
  expect(all).not.toMatch(/wall|window/i);
  expect(foot.checks.join()).toContain("Frame looked at");
  expect(foot.checks.join()).toContain("no hangings on a cot or a small child's bed");
  expect(foot.mark).toBeNull();
  expect(read("curtains-head", "head").lines.join()).toContain("Drawn together.");
});

test("a valance round a tester goes along both sides: 62 + 2 x 78 in, on no board that is bought", () => {
  const valance = (more: string) =>
    `  - valance: Tester\n    at: { on: four-poster }\n    cloth: moss\n    board: 62"\n    depth: 12"\n    top-height: 86"\n    heading: gathered\n${more}`;
  const { item } = furnished(valance('    return: 78"\n'));
  const { record, made } = item("valance-tester");
  const span = made.working.find((w) => w.what.startsWith("Span"));
  expect(span?.result).toBe("218″");
  expect(made.materials.map((m) => m.what).join()).not.toMatch(/board$|batten/);
  const fields = record.fields as never;
  const line = fitterReads(
    valanceDrawing.fitting?.(fields, made as never, fittingOn(null)) ?? null,
  );
  expect(line.lines.join()).toContain("Goes 78″ along each side.");
  expect([...line.lines, ...line.asks].join()).not.toMatch(/wall/);
  expect(line.mark).toBeNull();
  const bare = furnished(valance("")).item("valance-tester").made;
  expect(bare.working.find((w) => w.what.startsWith("Span"))?.result).toBe("62″");
  expect(bare.questions.join(" ")).not.toMatch(/wall/);
});

test("seen from the foot the head's curtain hangs behind the bed, the sides' within its edges, the foot's before it", () => {
  const all = ["head", "left", "right", "foot"].map((s) => curtains(s, AT(s))).join("");
  const { room } = furnished(all);
  const items = itemsByWall(room as never, 2540, context).walls.get("north") ?? [];
  const at = (id: string) => {
    const found = items.find(({ item }) => item.record.id === id);
    if (!found) throw new Error(`${id} is not drawn`);
    return { ...found, nth: items.indexOf(found) };
  };
  const bed = at("object-four-poster");
  const inches = (mm: number) => Math.round((mm / 25.4) * 100) / 100;
  // The hem 1/2 in over the floor, 84 in down from the ceiling's 100.
  for (const side of ["head", "left", "right", "foot"]) {
    const piece = at(`curtains-${side}`);
    expect(inches(2540 - piece.y - piece.height)).toBe(0.5);
  }
  expect(at("curtains-head").nth).toBeLessThan(bed.nth);
  expect(at("curtains-foot").nth).toBeGreaterThan(at("curtains-left").nth);
  expect(at("curtains-left").nth).toBeGreaterThan(bed.nth);
  expect(inches(at("curtains-left").x)).toBe(70);
  expect(inches(at("curtains-right").x + at("curtains-right").width)).toBe(130);
  const middle = at("curtains-foot");
  expect(inches(middle.x + middle.width / 2)).toBe(100);
  // Drawn together the head's fills its track; drawn back the foot's are two stacks.
  const folds = (id: string) => JSON.stringify(at(id).shapes).match(/"shape":"folds"/g)?.length;
  expect([folds("curtains-head"), folds("curtains-foot"), folds("curtains-left")]).toEqual([
    2, 2, 1,
  ]);
});

test("on a bare wall too curtains are drawn together, and are seen so wide; held by tie-backs they are not", () => {
  const wall = curtains("Behind", "at: { wall: south }");
  const ties = "  - tieback: Ties\n    at: { on: curtains-behind }\n    cloth: moss\n";
  const drawn = (items: string) => {
    const { room, item } = furnished(items);
    const all = itemsByWall(room as never, 2540, context).walls.get("south") ?? [];
    const shapes = all.find((i) => i.item.record.id === "curtains-behind")?.shapes;
    const folds = JSON.stringify(shapes).match(/"shape":"folds"[^}]*?"width":[\d.]+/g) ?? [];
    return {
      widths: folds.map((text) => Math.round(Number(text.split(":").at(-1)) / 25.4)),
      seen: item("curtains-behind").seen[0]?.areaMm2 as number,
    };
  };
  // A track of 60 in with a pair: 30 each. Down from 84 in to 1/2 in over the floor.
  expect(drawn(wall).widths).toEqual([30, 30]);
  expect(drawn(wall).seen).toBeCloseTo(60 * 83.5 * 25.4 ** 2, 3);
  expect(Math.max(...drawn(wall + ties).widths)).toBeLessThan(15);
});

/** The middles of what is drawn of an item's waves on the plan, in inches from the room's corner. */
function waves(shapes: readonly Shape[], x = 0, y = 0, turn = 0): [number, number][] {
  const c = Math.cos((turn * Math.PI) / 180);
  const s = Math.sin((turn * Math.PI) / 180);
  return shapes.flatMap((shape): [number, number][] => {
    if (shape.shape === "group") {
      const [dx, dy] = [shape.x ?? 0, shape.y ?? 0];
      return waves(
        shape.children,
        x + dx * c - dy * s,
        y + dx * s + dy * c,
        turn + (shape.turnDeg ?? 0),
      );
    }
    if (shape.shape !== "path" || shape.fill !== null || shape.d.length < 200) return [];
    const points = [...shape.d.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g)].map((m) => {
      const [px, py] = [Number(m[1]), Number(m[2])];
      return [x + px * c - py * s, y + px * s + py * c] as const;
    });
    const mid = (of: number[]) => (Math.min(...of) + Math.max(...of)) / 2 / 25.4;
    return [[mid(points.map((p) => p[0])), mid(points.map((p) => p[1]))]];
  });
}

test("on the plan each curtain lies along its side of the bed, whose head is at the north wall", () => {
  for (const [side, axis, line] of [
    ["left", 0, 70],
    ["right", 0, 130],
    ["foot", 1, 80],
  ] as const) {
    const { room } = furnished(curtains("Side", AT(side)));
    const found = waves(floorPlanShapes(room as never, context)?.shapes ?? []);
    expect(found).toHaveLength(2);
    for (const point of found) expect(point[axis]).toBeCloseTo(line, 0);
  }
});
