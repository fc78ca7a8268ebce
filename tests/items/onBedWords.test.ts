import { expect, test } from "vitest";
import { curtainsDrawing } from "../../src/items/curtains/drawing.ts";
import { pelmetDrawing } from "../../src/items/pelmet/drawing.ts";
import { STUDIO_INCHES } from "../quantities/studioOf.ts";
import { roomOf } from "../room/roomOf.ts";

// What is said of hangings of a bed while something is missing or does not fit: in words of a bed, not of a window (no source).

const context = {
  units: "inches",
  language: "en-US",
  cloth: () => null,
  object: () => null,
  window: null,
  box: null,
  on: null,
  hangsOn: { title: "Oak bed", side: null },
  assumed: [],
} as const;

const OBJECTS = {
  "four-poster": 'object: Oak bed\nshape: bed\nsize: 60" x 80" x 50"',
  settle: 'object: Settle\nshape: seat\nsize: 60" x 30" x 40"',
  crate: 'object: Crate bed\nsize: 60" x 80" x 20"',
};
const ON = (host: string) => `at: { on: ${host}, side: foot }`;

function furnished(items: string) {
  const stand = Object.keys(OBJECTS)
    .map((id, at) => `  - object: ${id}\n    at: { wall: north, from-left: ${70 * at}" }\n`)
    .join("");
  const room = roomOf(
    `room: R\nheight: 100"\nfloor: 300" x 160"\nwalls:\n  - wall: south\n    length: 300"\n    windows: [{ window: bay, from-left: 40", size: 60" x 50", sill: 30" }]\n  - { wall: north, length: 300" }\n  - { wall: east, length: 160" }\n  - { wall: west, length: 160" }\nitems:\n${stand}${items}`,
    {
      studio: STUDIO_INCHES,
      objects: OBJECTS,
      cloths: {
        moss: 'cloth: Moss\nwidth: 54"\nkind: small-print\nrepeat: { up: 10", across: 9" }\nmotif: 3"',
      },
    },
  );
  const own = (id: string) => room.items.find(({ record }) => record.id === id);
  return {
    told: room.diagnostics,
    item: (id: string) => {
      const found = own(id);
      if (!found) throw new Error(`no ${id}`);
      return found;
    },
  };
}
const curtains = (at: string, more: string) =>
  `  - curtains: A\n    ${at}\n    cloth: moss\n    heading: pencil-pleat\n${more
    .split(";")
    .map((line) => `    ${line.trim()}\n`)
    .join("")}`;

test("what is missing of hangings of a bed is told in words of a bed, with no window to be named", () => {
  const cases: readonly (readonly [string, RegExp])[] = [
    [curtains(ON("four-poster"), 'pole-height: 84"; to: floor'), /how long the pole .* at Oak bed/],
    [curtains(ON("four-poster"), 'pole: 60"; to: floor'), /the pole's height is not known/],
    [
      curtains(ON("four-poster"), 'pole: 60"; pole-height: 84"; to: sill'),
      /Oak bed, which has none/,
    ],
    [
      `  - pelmet: A\n    ${ON("four-poster")}\n    cloth: moss\n    depth: 10"\n    top-height: 86"\n`,
      /how long the front of this pelmet is at Oak bed/,
    ],
  ];
  for (const [items, words] of cases) {
    const { item } = furnished(items);
    const made = (
      item("curtains-a".replace("curtains", items.includes("pelmet") ? "pelmet" : "curtains")) as {
        made: { diagnostics: readonly { message: string; hint?: string }[] };
      }
    ).made.diagnostics;
    expect(made).toHaveLength(1);
    expect(made[0]?.message).toMatch(words);
    expect(`${made[0]?.message} ${made[0]?.hint}`).not.toMatch(/window/);
  }
});

test("what hangs on a piece that is no bed is told at its line; a bed, a box and a headboard may carry it", () => {
  const hung = 'pole: 60"; pole-height: 84"; to: floor';
  const codes = (items: string) =>
    furnished(items).told.filter(({ code }) => /no-bed|no-window/.test(code));
  expect(codes(curtains(ON("settle"), hung))).toMatchObject([
    {
      code: "hangs-on-no-bed",
      keyPath: "items[3].at.on",
      severity: "warning",
      message: expect.stringMatching(/^Settle is a seat by its card/),
    },
  ]);
  // A valance over the curtains of a window would lose its returns in silence.
  const over = `${curtains("at: bay", hung)}  - valance: A\n    at: { on: curtains-a }\n    cloth: moss\n    board: 70"\n    depth: 10"\n    heading: gathered\n`;
  expect(codes(over)).toMatchObject([{ code: "hangs-on-no-bed", keyPath: "items[4].at.on" }]);
  for (const bed of ["four-poster", "crate"]) expect(codes(curtains(ON(bed), hung))).toEqual([]);
  expect(codes(curtains(ON("four-poster"), `${hung}; mount: inside`))).toMatchObject([
    { code: "mount-of-no-window", keyPath: "items[3].mount", severity: "warning" },
  ]);
});

test("a front alone on a bed has no returns to measure or to clear, and no top; its fitter reads of a tester", () => {
  const pelmet = (more: string) => {
    const { record, made } = furnished(
      `  - pelmet: A\n    ${ON("four-poster")}\n    cloth: moss\n    board: 62"\n    depth: 10"\n    stiffening: board\n${more}`,
    ).item("pelmet-a");
    const sheet = pelmetDrawing.sheet(record.fields as never, made as never, context as never);
    const line = pelmetDrawing.fitting?.(record.fields as never, made as never, context as never);
    return {
      sheet: [...sheet.groups.flatMap((g) => g.lines), ...sheet.checks.map((c) => c.text)].join(
        " ",
      ),
      fitter: JSON.stringify(line),
    };
  };
  const alone = pelmet("");
  expect(alone.sheet).toContain("Tester measured");
  expect(alone.sheet).not.toMatch(/return|Board measured/);
  expect(alone.fitter).toContain("How high above the floor is the tester's top?");
  expect(alone.fitter).not.toMatch(/[Bb]oard/);
  // Round three sides its box has ends and stands open above: the tester is its top.
  expect(pelmet('    return: 78"\n').sheet).toContain("ends 78″ long, no top: it hangs on the bed");
});

test("where curtains return to no wall their half widths join at the outer edge", () => {
  const cut = (at: string) => {
    const { record, made } = furnished(
      curtains(at, 'pole: 48"; pole-height: 84"; to: floor; fullness: 2.5'),
    ).item("curtains-a");
    const sheet = curtainsDrawing.sheet(record.fields as never, made as never, context as never);
    return sheet.groups.find((g) => g.heading === "Cut")?.lines.join(" ");
  };
  // A curtain's half of (48 + 3) x 2.5 and two side hems is 67 3/4 in, on the wall of (48 + 3 + 7) x 2.5 76 1/2: a width and a half of 54 in.
  expect(cut(ON("four-poster"))).toContain("The half widths join at the outer edge");
  expect(cut('at: { wall: south, from-left: 200" }')).toContain("join at the return side");
});

test("one curtain alone begins like no other", () => {
  const lines = (panels: string) => {
    const { record, made } = furnished(
      curtains(ON("four-poster"), `pole: 60"; pole-height: 84"; to: floor; panels: ${panels}`),
    ).item("curtains-a");
    const sheet = curtainsDrawing.sheet(record.fields as never, made as never, context as never);
    return sheet.groups.flatMap((g) => g.lines).join(" ");
  };
  expect(lines("pair")).toContain("both begin alike at the leading edge");
  expect(lines("single")).not.toContain("both");
});

test("what hangs on a bed is at no window: neither its colour's height nor what is asked of its cloth in the light is a window's", () => {
  const hung = 'pole: 60"; pole-height: 84"; to: floor';
  expect(furnished(curtains(ON("four-poster"), hung)).item("curtains-a").zone).toBe("wall");
  expect(furnished(curtains("at: bay", hung)).item("curtains-a").zone).toBe("window");
});
