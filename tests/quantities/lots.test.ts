import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { onDisk, roomFile, STUDIO } from "./program.ts";
import { PROJECT, quantitiesOf, type SmallStudio, STUDIO_CM } from "./studioOf.ts";

// One maker's rooms over several lots of one cloth: each room from one lot. Common practice, no source.
const MOSS = "cloth: Moss\nwidth: 137 cm\nkind: plain";
const FERN = "cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }";
const MEASURED = "measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }";
const curtains = (name: string, drop: number) =>
  `  - curtains: ${name}\n    cloth: cloth\n    pole: 200 cm\n    drop: ${drop} cm\n    heading: pencil-pleat\n    half-widths: no\n`;
const cushions = (name: string, count: number) =>
  `  - cushion: ${name}\n    cloth: cloth\n    count: ${count}\n    size: 50 cm x 50 cm\n`;
const receipts = (...lots: readonly string[]) =>
  `${PROJECT}\nreceipts:\n${lots.map((lot) => `  - { cloth: cloth, ${lot} }`).join("\n")}`;

interface Given {
  readonly card?: string;
  readonly lots: readonly string[];
  readonly rooms: Readonly<Record<string, string>>;
}

function given({ card = MOSS, lots, rooms }: Given) {
  const small: SmallStudio = {
    studio: STUDIO_CM,
    project: receipts(...lots),
    cloths: { cloth: card },
    rooms: Object.fromEntries(
      Object.entries(rooms).map(([id, items]) => [
        id,
        `room: ${id === "sitting" ? "Sitting room" : "Bedroom"}\n${MEASURED}\nitems:\n${items}`,
      ]),
    ),
  };
  const q = quantitiesOf(small);
  const [cloth] = q.cloths;
  if (!cloth) throw new Error("no cloth");
  return { cloth, diagnostics: q.diagnostics, codes: q.diagnostics.map((each) => each.code) };
}

const TWO_ROOMS = { bedroom: curtains("Window", 230), sitting: curtains("Bay", 260) };

/** Millimetres of one lot that are sure to hold these rooms: the plan, a repeat for the start, a hand more. */
function enough(rooms: Readonly<Record<string, string>>, card = MOSS): number {
  return (
    Math.ceil(given({ card, lots: ["lot: A, length: 60 m"], rooms }).cloth.plan.length.toMm()) + 740
  );
}

/** What every division must keep: all there, each item from one lot, nothing beyond what came. */
function isSound({ cloth }: ReturnType<typeof given>, came: Readonly<Record<string, number>>) {
  const { plan, lots } = cloth;
  expect(plan.forCutting).toBe(true);
  const lotOf = (length: number) => lots.find((lot) => lot.lengths.includes(length))?.lot;
  expect(plan.lengths.map((_, i) => lotOf(i))).not.toContain(undefined);
  const byItem = new Map<string, Set<string | undefined>>();
  for (const piece of plan.pieces) {
    const key = `${piece.room}/${piece.item}`;
    byItem.set(key, (byItem.get(key) ?? new Set()).add(lotOf(piece.length)));
  }
  for (const used of byItem.values()) expect(used.size).toBe(1);
  for (const { lot, lengths } of lots) {
    const used = lengths.reduce((sum, i) => sum + (plan.lengths[i]?.toMm() ?? 0), 0);
    expect(used).toBeLessThanOrEqual(came[lot] as number);
  }
  expect(plan.lowerBound.isMoreThan(plan.length)).toBe(false);
}

test.each([
  ["plain", MOSS],
  ["in register", FERN],
])("two lots, neither enough for both rooms: each room from one (%s)", (_, card) => {
  const whole = given({ card, lots: ["lot: A, length: 60 m"], rooms: TWO_ROOMS });
  const each = enough({ sitting: TWO_ROOMS.sitting }, card);
  expect(each).toBeLessThan(whole.cloth.plan.length.toMm());
  const two = given({
    card,
    lots: [`lot: A, length: ${each} mm`, `lot: B, length: ${each} mm`],
    rooms: TWO_ROOMS,
  });
  isSound(two, { A: each, B: each });
  expect(two.cloth.lots.map((lot) => lot.rooms.length)).toEqual([1, 1]);
  expect(two.cloth.lots.flatMap((lot) => lot.rooms.map((r) => r.room)).sort()).toEqual([
    "bedroom",
    "sitting",
  ]);
  expect(two.codes).not.toContain("room-in-two-lots");
  expect(two.codes).not.toContain("received-not-enough");
  // What was ordered stays as it was ordered.
  expect(two.cloth.buy.text).toBe(whole.cloth.buy.text);
  // Which lot a length is of belongs to the plan that is released.
  const named = given({
    card,
    lots: [`lot: C, length: ${each} mm`, `lot: B, length: ${each} mm`],
    rooms: TWO_ROOMS,
  });
  expect(named.cloth.plan.number).not.toBe(two.cloth.plan.number);
});

test("one lot that is enough is not divided, however many came", () => {
  const found = given({
    lots: ["lot: A, length: 60 m", "lot: B, length: 60 m"],
    rooms: TWO_ROOMS,
  });
  expect(found.cloth.lots).toMatchObject([{ lot: "A", rooms: [{}, {}] }]);
});

test("as few lots as will do, and a lot of another repeat is not mixed in", () => {
  const each = enough({ sitting: TWO_ROOMS.sitting }, FERN);
  const lots = ["A", "B", "C"].map((lot) => `lot: ${lot}, length: ${each} mm`);
  const rooms = TWO_ROOMS;
  const three = given({ card: FERN, lots, rooms });
  isSound(three, { A: each, B: each, C: each });
  expect(three.cloth.lots.length).toBe(2);
  const other = [lots[0] as string, `${lots[1]}, repeat: 66 cm`];
  const mixed = given({ card: FERN, lots: other, rooms });
  expect(mixed.cloth.plan.forCutting).toBe(false);
  expect(mixed.codes).toContain("received-not-enough");
});

test("planned at the narrowest width of the lots", () => {
  const each = enough({ sitting: TWO_ROOMS.sitting }, MOSS.replace("137", "130"));
  const found = given({
    lots: [`lot: A, length: ${each} mm`, `lot: B, length: ${each} mm, width: 130 cm`],
    rooms: TWO_ROOMS,
  });
  isSound(found, { A: each, B: each });
  expect(found.cloth.usableWidth.toMm()).toBe(1300);
  expect(found.codes).toContain("arrived-narrower");
});

test("one room that no lot holds is divided by its items, and that is said", () => {
  const rooms = { bedroom: curtains("Window", 230) + cushions("Bed", 6) };
  const a = enough({ bedroom: curtains("Window", 230) }) - 740;
  const b = enough({ bedroom: cushions("Bed", 6) }) - 740;
  const found = given({ lots: [`lot: A, length: ${a} mm`, `lot: B, length: ${b} mm`], rooms });
  isSound(found, { A: a, B: b });
  expect(found.cloth.lots).toMatchObject([
    { lot: "A", rooms: [{ room: "bedroom", items: ["curtains-window"] }] },
    { lot: "B", rooms: [{ room: "bedroom", items: ["cushion-bed"] }] },
  ]);
  const said = found.diagnostics.find((each) => each.code === "room-in-two-lots");
  expect(said).toMatchObject({ severity: "warning", keyPath: "receipts[1].lot" });
  expect(said?.message).toBe("Moss in Bedroom is cut from 2 lots: A (Window) and B (Bed).");
});

test("a room that no division holds: which, what it needs, and by how much it is short", () => {
  const found = given({ lots: ["lot: A, length: 5 m", "lot: B, length: 4 m"], rooms: TWO_ROOMS });
  expect(found.cloth).toMatchObject({ lot: null, lots: [] });
  expect(found.cloth.plan.forCutting).toBe(false);
  const said = found.diagnostics.find((each) => each.code === "received-not-enough");
  const short = (room: string, need: number) =>
    `${room} alone needs about ${need} m of one lot; the longest, lot A, has 5 m: ${Number((need - 5).toFixed(2))} m too little.`;
  const alone = (id: "bedroom" | "sitting") =>
    given({ lots: ["lot: A, length: 60 m"], rooms: { [id]: TWO_ROOMS[id] } }).cloth.plan.length;
  const metres = (id: "bedroom" | "sitting") => Number((alone(id).toMm() / 1000).toFixed(2));
  const plain = (said?.message ?? "").replaceAll(/[\u00a0\u2009\u202f]/g, " ");
  expect(plain).toContain(short("Bedroom", metres("bedroom")));
  expect(plain).toContain(short("Sitting room", metres("sitting")));
});

test("what one lot would need: a repeat more is spoken of only where the cloth has one", () => {
  const said = (card: string) =>
    given({ card, lots: ["lot: A, length: 5 m"], rooms: TWO_ROOMS }).diagnostics.find(
      (each) => each.code === "received-not-enough",
    )?.message;
  expect(said(MOSS)).toMatch(/of one lot without flaws would do\./);
  expect(said(FERN)).toMatch(/would do, with a repeat for where the pattern begins\./);
});

// Through the program, on files.
const disk = onDisk({
  "studio.md": STUDIO,
  "cloths/fern.md": `cloth: Fern\nwidth: 54"\nrepeat: { up: 25", across: 27", match: straight }`,
  "projects/p/bedroom.md": roomFile(
    "Bedroom",
    `  - curtains: Window\n    cloth: fern\n    pole: 80"\n    drop: 84"\n    heading: pencil-pleat`,
  ),
  "projects/p/sitting-room.md": roomFile(
    "Sitting room",
    `  - curtains: Bay\n    cloth: fern\n    pole: 80"\n    drop: 96"\n    heading: pencil-pleat\n  - cushion: Sofa\n    cloth: fern\n    count: 2\n    size: 18" x 18"`,
  ),
  "projects/p/project.md": `project: P\nclient: { name: Nobody }\nstatus: ordered\nreceipts:\n  - { cloth: fern, lot: A-31, length: 15 yd, on: 2026-11-02 }\n  - { cloth: fern, lot: B-07, length: 14 yd, on: 2026-11-02, first-motif: 9" }`,
});
afterAll(() => disk.remove());

test("from receipts in a file to the text, the JSON and the sheet", () => {
  const json = disk.run("quantities", "p", "--json");
  const [cloth] = JSON.parse(json.stdout).cloths;
  expect(cloth.lot).toBe("A-31 and B-07");
  expect(cloth.plan.forCutting).toBe(true);
  expect(cloth.lots.map((each: { lot: string }) => each.lot)).toEqual(["A-31", "B-07"]);
  for (const piece of cloth.plan.pieces) {
    const lot = cloth.lots.find((each: { lengths: number[] }) =>
      each.lengths.includes(piece.length),
    );
    expect(lot.rooms.map((each: { room: string }) => each.room)).toEqual([piece.room]);
  }
  const text = disk.run("quantities", "p").stdout;
  expect(text).toContain("CLOTH Fern, for anna, lots A-31 and B-07");
  expect(text).toContain("No one lot holds everything. Lot A-31: Sitting room; lot B-07: Bedroom.");
  expect(text).toMatch(/length 2 of lot B-07, .*Window, drapery: /);
  const room = disk.run("quantities", "p/bedroom").stdout;
  expect(room).toContain("No one lot holds everything. Lot B-07: Bedroom.");
  const built = disk.run("build", "--no-pdf");
  expect(built.status, built.stderr).toBe(0);
  const made = join(disk.home, "out/makers/anna");
  const pages = readdirSync(made, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".html"))
    .map((name) => readFileSync(join(made, name), "utf8"));
  const plans = pages.filter((page) => page.includes("Cutting plan: Fern"));
  expect(plans.length).toBe(2);
  for (const page of plans) {
    expect(page).toContain("Lot A-31: sitting room; lot B-07: bedroom.");
    expect(page).toContain("start of length 2, lot B-07");
    expect(page).toContain("length 2, lot B-07: ");
    expect(page).toMatch(/Begin length 1: .* motif’s middle; length 2: 16/);
  }
});
