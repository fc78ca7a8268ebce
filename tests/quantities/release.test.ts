import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { onDisk, roomFile, STUDIO } from "./program.ts";
import { PROJECT, quantitiesOf, type SmallStudio, STUDIO_CM } from "./studioOf.ts";

// When a plan may be cut. Common practice, no source.
const FERN = `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }`;
const CUSHIONS = (count: number) =>
  `  - cushion: One\n    cloth: fern\n    count: ${count}\n    size: 50 cm x 50 cm\n`;
const MEASURED = "measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }";
const RELEASED = (plan: string, on = "2026-11-02") =>
  `released: { by: Ada Wren, on: ${on}${plan ? `, plan: ${plan}` : ""} }`;

const studio = (receipt: string, more: Partial<{ measured: string; count: number }> = {}) =>
  ({
    studio: STUDIO_CM,
    project: receipt ? `${PROJECT}\nreceipts:\n  - { cloth: fern, lot: A, ${receipt} }` : PROJECT,
    cloths: { fern: FERN },
    rooms: {
      a: `room: A\n${more.measured ?? MEASURED}\nitems:\n${CUSHIONS(more.count ?? 2)}`,
    },
  }) satisfies SmallStudio;
const fern = (small: SmallStudio) => {
  const q = quantitiesOf(small);
  const plan = q.cloths[0]?.plan;
  if (!plan) throw new Error("no plan");
  const codes = q.diagnostics.map((each) => each.code);
  return { plan, codes, diagnostics: q.diagnostics };
};
const NUMBER = fern(studio("length: 5 m, on: 2026-11-01")).plan.number;

test("received and checked is not yet released; the release names who and when", () => {
  const ready = fern(studio("length: 5 m"));
  expect(ready.plan).toMatchObject({ forCutting: true, released: null });
  const done = fern(studio(`length: 5 m, on: 2026-11-01, ${RELEASED(NUMBER)}`));
  expect(done.plan.released).toEqual({ by: "Ada Wren", on: "2026-11-02" });
  expect(done.codes).not.toContain("release-refused");
});

test.each([
  ["measures not checked", "length: 5 m", { measured: "" }, "release-refused"],
  ["too little came", "length: 1 m", {}, "release-refused"],
  ["released before it came", "length: 5 m, on: 2026-12-24", {}, "release-before-receipt"],
])("refused and said at its line: %s", (_, receipt, more, code) => {
  const { plan, diagnostics } = fern(studio(`${receipt}, ${RELEASED(NUMBER)}`, more));
  expect(plan.released).toBeNull();
  const refused = diagnostics.find((each) => each.code === code);
  expect(refused).toMatchObject({ severity: "warning", file: "projects/test/project.md" });
  expect(refused?.keyPath).toMatch(/^receipts\[0\]\.released/);
  expect(refused?.hint).toBeTruthy();
});

test("a plan that has changed since is not released any more; the number tells", () => {
  const receipt = `length: 5 m, ${RELEASED(NUMBER)}`;
  const changed = fern(studio(receipt, { count: 3 }));
  expect(changed.plan.number).not.toBe(NUMBER);
  expect(changed.plan.released).toBeNull();
  const said = changed.diagnostics.find((each) => each.code === "release-of-another-plan");
  expect(said?.message).toContain(NUMBER);
  expect(said?.hint).toContain(changed.plan.number);
  const bare = fern(studio(`length: 5 m, ${RELEASED("")}`));
  expect(bare.plan.released).not.toBeNull();
  expect(bare.codes).toContain("release-without-number");
});

test("a cloth that came with two receipts is released on either; the newer release counts before one that is overtaken", () => {
  const two = (first: string, second: string) =>
    fern({
      ...studio("length: 5 m, on: 2026-11-01"),
      project: `${PROJECT}\nreceipts:\n  - { cloth: fern, lot: A, length: 3 m, on: 2026-11-01${first} }\n  - { cloth: fern, lot: A, length: 2 m, on: 2026-11-01${second} }`,
    });
  const { number } = two("", "").plan;
  const old = `, ${RELEASED("0000-000", "2026-11-02")}`;
  const now = `, ${RELEASED(number, "2026-11-03")}`;
  for (const [first, second] of [
    [now, ""],
    ["", now],
    [old, now],
    [now, old],
  ] as const)
    expect(two(first, second).plan.released?.on).toBe("2026-11-03");
  expect(two(old, "").codes).toContain("release-of-another-plan");
});

test("a flaw is an area: beside it is cut, over it is not; across the whole width unless it says how wide", () => {
  const flaw = (more: string) =>
    fern(studio(`length: 3 m, first-motif: 32 cm, flaws: [{ from: 0.5 cm, length: 3 m${more} }]`));
  // A flaw of the left half for the whole length: all that is cut lies in the right half.
  const half = flaw(", from-left: 0 cm, width: 68.5 cm");
  expect(half.plan.pieces.length).toBe(4);
  for (const piece of half.plan.pieces) expect(piece.x.toMm()).toBeGreaterThanOrEqual(685);
  expect(half.codes).toContain("flaw-beyond-length");
  expect(flaw("").plan.forCutting).toBe(false);
  const narrow = flaw(", from-left: 130 cm, width: 20 cm");
  expect(narrow.codes).toContain("flaw-beyond-width");
});

test("where the pattern begins is measured: no reserve, and motifs stand where the cloth has them", () => {
  const near = fern(studio("length: 1.3 m, first-motif: 40 cm", { count: 1 }));
  expect(near.plan.forCutting).toBe(true);
  for (const piece of near.plan.pieces) {
    const middle = piece.y.toMm() + piece.height.toMm() / 2;
    if (piece.register?.y) expect((((middle - 400) % 640) + 640) % 640).toBeCloseTo(0, 6);
  }
  // The same length without that word keeps a repeat back and is too short.
  expect(fern(studio("length: 1.1 m", { count: 1 })).plan.forCutting).toBe(false);
});

test("narrower than its card: the items are worked out anew on what came, and what no longer fits is named", () => {
  const curtains = (width: string) => ({
    studio: STUDIO_CM,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 40 m, width: ${width} }]`,
    cloths: { fern: FERN },
    rooms: {
      a: `room: A\n${MEASURED}\nitems:\n  - curtains: Bay\n    cloth: fern\n    pole: 260 cm\n    drop: 230 cm\n    heading: pencil-pleat\n    half-widths: no\n`,
    },
  });
  const same = quantitiesOf(curtains("137 cm"));
  const less = quantitiesOf(curtains("110 cm"));
  const drops = (q: typeof same) => q.cloths[0]?.plan.pieces.length ?? 0;
  expect(drops(less)).toBeGreaterThan(drops(same));
  // What was ordered stays as it was ordered; what the maker works to is what came.
  expect(less.cloths[0]?.buy.text).toBe(same.cloths[0]?.buy.text);
  const widths = (rooms: typeof same.rooms) => rooms[0]?.items[0]?.made.figures.widths;
  expect(widths(less.rooms)).toBe(widths(same.rooms));
  expect(widths(less.asArrived)).toBe(drops(less));
  const bolster = quantitiesOf({
    ...curtains("137 cm"),
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 40 m, width: 50 cm }]`,
    rooms: { a: `room: A\n${MEASURED}\nitems:\n${CUSHIONS(1)}` },
  });
  const said = bolster.diagnostics.find((each) => each.code === "received-not-enough");
  expect(said?.message).toContain("No place is found for: One");
});

test("one room, two makers, two lots: said; one lot: silent", () => {
  const two = (lots: readonly [string, string]) =>
    quantitiesOf({
      studio: `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion] }, berta: { name: Berta, makes: [cushion] } }`,
      project: `${PROJECT}\nreceipts:\n  - { cloth: fern, lot: ${lots[0]}, length: 5 m, maker: anna }\n  - { cloth: fern, lot: ${lots[1]}, length: 5 m, maker: berta }`,
      cloths: { fern: FERN },
      rooms: {
        a: `room: A\n${MEASURED}\nitems:\n${CUSHIONS(2)}${CUSHIONS(2).replace("One", "Two")}    maker: berta\n`,
      },
    }).diagnostics.filter((each) => each.code === "room-in-two-lots");
  expect(two(["A", "A"])).toEqual([]);
  const [said] = two(["A", "B"]);
  expect(said).toMatchObject({ severity: "warning", keyPath: "receipts[1].lot" });
});

const disk = onDisk({
  "studio.md": STUDIO,
  "cloths/fern.md": `cloth: Fern\nwidth: 54"\nrepeat: { up: 25", across: 27", match: straight }`,
  "cloths/moss.md": `cloth: Moss\nwidth: 54"\nkind: plain`,
  "projects/p/a.md": roomFile(
    "A",
    `  - cushion: One\n    cloth: fern\n    back: moss\n    size: 20" x 20"`,
  ),
  "projects/p/project.md": "project: P\nclient: { name: Nobody }\nstatus: ordered",
});
afterAll(disk.remove);

test("the sheet: NOT FOR CUTTING until every cloth on it is released, then who released it", () => {
  const sheet = (receipts: string) => {
    disk.put(
      "projects/p/project.md",
      `project: P\nclient: { name: Nobody }\nstatus: ordered\nreceipts:\n${receipts}`,
    );
    expect(disk.run("build", "--no-pdf").status).toBe(0);
    return readFileSync(join(disk.home, "out/makers/anna/p/a.html"), "utf8");
  };
  const receipt = (cloth: string, number: string) =>
    `  - { cloth: ${cloth}, lot: A, length: 4 yd, on: 2026-11-01${number ? `, released: { by: Ada Wren, on: 2026-11-02, plan: ${number} }` : ""} }\n`;
  const before = sheet(receipt("fern", "") + receipt("moss", ""));
  expect(before).toContain("NOT FOR CUTTING");
  expect(before).toContain("has still to release");
  expect(before).not.toContain("Released to cut");
  const numbers = [...before.matchAll(/Plan ([0-9A-Z]{4}-[0-9A-Z]{3})/g)].map((each) => each[1]);
  expect(numbers).toHaveLength(2);
  const one = sheet(receipt("fern", numbers[0] as string) + receipt("moss", ""));
  expect(one).toContain("NOT FOR CUTTING");
  const both = sheet(receipt("fern", numbers[0] as string) + receipt("moss", numbers[1] as string));
  expect(both).not.toContain("NOT FOR CUTTING");
  expect(both).toContain("Released to cut by Ada Wren, November 2, 2026.");
});
