import { expect, test } from "vitest";
import { schemeJson } from "../../src/scheme/toJson.ts";
import { furnishedScheme } from "./furnished.ts";

// What is seen, from a room's own measures; every area reckoned by hand beside its test.

const RED = "#9b4529";
const CREAM = "#efe4cb";
const GREEN = "#2f5446";

const CLOTHS = {
  rose: `cloth: Rose\nwidth: 140 cm\nkind: large-print\nmotif: 20 cm\nfire: passes\ncolours: [{ colour: "${CREAM}", share: 70 % }, { colour: "${RED}", share: 30 % }]`,
  linen: `cloth: Linen\nwidth: 140 cm\nkind: plain\nfire: passes\ncolours: [{ colour: "${RED}" }]`,
};
const OBJECTS = {
  rug: `object: Rug\nshape: rug\nsize: 2 m x 3 m\nowner: client\nstays: yes\ncolours: [{ colour: "${GREEN}" }]`,
  table: `object: Table\nshape: table\nsize: 1 m x 2 m x 75 cm\ncolours: [{ colour: "${GREEN}" }]`,
  sea: `object: Sea\nshape: picture\nsize: 60 cm x 40 cm\ncolours: [{ colour: "${GREEN}" }]`,
};
/** 5 m by 4 m, 2.5 m high: walls of 12.5 and 10 m², one window of 1.2 x 1.5 m in the north wall, a door of 0.9 x 2 m in the south wall. */
const ROOM = (items: string, more = "") => ({
  studio: `studio: Test\nlanguage: en-GB\nunits: centimetres\ncurrency: EUR\npaper: a3`,
  cloths: CLOTHS,
  objects: OBJECTS,
  rooms: {
    den: `room: Den
height: 2.5 m
walls:
  - { wall: north, length: 5 m, windows: [{ window: bay, from-left: 1.9 m, size: 1.2 m x 1.5 m, sill: 80 cm }] }
  - { wall: east, length: 4 m }
  - { wall: south, length: 5 m, doors: [{ door: hall, from-left: 1 m, size: 90 cm x 2 m }] }
  - { wall: west, length: 4 m }
colours: [{ colour: "${CREAM}", name: Cream }, { colour: "${RED}", name: Rust }, { colour: "${GREEN}", name: Bottle }]
${more}items:
${items}`,
  },
});
const PAINT = `  - paint: Walls\n    on: walls\n    colour: "${CREAM}"\n    coats: 2\n`;
const RUG = `  - object: rug\n    at: { floor: 2.5 m x 2 m }\n`;
const m2 = (mm2: number): number => mm2 / 1e6;

test("walls less their openings, by wall and for the room", () => {
  const { input, scheme } = furnishedScheme(ROOM(PAINT));
  const painted = input.seen.filter((s) => s.item === "paint-walls");
  // 2 x 12.5 + 2 x 10 - 1.8 (window) - 1.8 (door) = 41.4 m2.
  expect(m2(painted.reduce((a, s) => a + s.areaMm2, 0))).toBeCloseTo(41.4, 6);
  const walls = Object.fromEntries(scheme.byWall.map((w) => [w.place, m2(w.areaMm2)]));
  expect(walls.north).toBeCloseTo(10.7, 6);
  expect(walls.south).toBeCloseTo(10.7, 6);
  expect(walls.east).toBeCloseTo(10, 6);
  expect(scheme.byZone.find((z) => z.place === "wall")?.shares).toMatchObject([
    { name: "Cream", hundredths: 100 },
  ]);
});

test("the bare floor counts once its colour is said; until then it is left out, and nothing is complained of what is not known", () => {
  const bare = furnishedScheme(ROOM(`${PAINT}${RUG}`)).scheme;
  const oak = furnishedScheme(
    ROOM(`${PAINT}${RUG}`, `flooring: { what: oak boards, colour: "#a37b4f" }\n`),
  ).scheme;
  const floor = (scheme: typeof bare) => scheme.byZone.find((z) => z.place === "floor")?.shares;
  // 20 m2 of floor, 6 of them under the rug; 41.4 m2 of wall.
  expect(floor(bare)).toMatchObject([{ name: "Bottle", hundredths: 100 }]);
  expect(bare.knownShare).toBeCloseTo(47.4 / 61.4, 6);
  expect(oak.knownShare).toBeCloseTo(1, 9);
  expect(floor(oak)).toMatchObject([{ hundredths: 70 }, { name: "Bottle", hundredths: 30 }]);
  expect(oak.shares.map((s) => s.hundredths)).toEqual([67, 23, 10]);
});

test("the floor less its rug, and the rug less what stands on it", () => {
  const { input } = furnishedScheme(
    ROOM(`${PAINT}${RUG}  - object: table\n    at: { floor: 2.5 m x 2 m, facing: south }\n`),
  );
  const of = (item: string | null, kind?: string): number =>
    m2(
      input.seen
        .filter((s) => s.item === item && (kind === undefined || s.kind === kind))
        .reduce((a, s) => a + s.areaMm2, 0),
    );
  // 20 m2 of floor; the rug 6 m2, of which the table hides 2 m2.
  expect(of(null, "floor")).toBeCloseTo(14, 6);
  expect(of("object-rug")).toBeCloseTo(4, 6);
});

test("a picture stands before the wall, and hides so much of it", () => {
  const { input } = furnishedScheme(
    ROOM(`${PAINT}  - object: sea\n    at: { wall: east, from-left: 1 m, height: 1.3 m }\n`),
  );
  const east = input.seen.filter((s) => s.item === "paint-walls" && s.wall === "east");
  expect(m2(east.reduce((a, s) => a + s.areaMm2, 0))).toBeCloseTo(10 - 0.24, 6);
});

const CURTAINS = `  - curtains: Bay
    at: bay
    mount: outside
    cloth: rose
    pole: 2 m
    drop: 2 m
    heading: pinch-pleat
    making: 1
`;

test("curtains as they hang: drawn back their stacks are seen, closed the whole pole by the drop; the plain share follows", () => {
  const { input, scheme } = furnishedScheme(ROOM(`${PAINT}${CURTAINS}`));
  const face = (seen: typeof input.seen): number =>
    m2(seen.filter((s) => s.item === "curtains-bay").reduce((a, s) => a + s.areaMm2, 0));
  expect(face(input.closed)).toBeCloseTo(4, 6);
  expect(face(input.seen)).toBeGreaterThan(0.3);
  expect(face(input.seen)).toBeLessThan(2.5);
  expect(scheme.plainClosed ?? 1).toBeLessThan(scheme.plainShare ?? 0);
  const finding = scheme.findings.find((f) => f.code === "plain-enough");
  expect(finding?.message).toContain("With the curtains closed it is");
});

test("each colour by height, and its share of what is known", () => {
  const { scheme } = furnishedScheme(
    ROOM(
      `${PAINT}${RUG}  - cushion: Pad\n    cloth: linen\n    size: 50 cm x 50 cm\n    edge: knife\n    making: 1\n`,
    ),
  );
  const zones = Object.fromEntries(
    scheme.byZone.map((z) => [z.place, z.shares.map((s) => [s.name, s.hundredths])]),
  );
  expect(zones).toEqual({
    floor: [["Bottle", 100]],
    seat: [["Rust", 100]],
    wall: [["Cream", 100]],
  });
  // 41.4 m2 cream, 6 m2 bottle, 0.25 m2 rust: 87, 12 and 1 of a hundred.
  expect(scheme.shares.map((s) => [s.name, s.hundredths])).toEqual([
    ["Cream", 87],
    ["Bottle", 12],
    ["Rust", 1],
  ]);
});

test("from the door and from the seat: distances on the plan, and what then reads as a plain, of which colour", () => {
  const chair = (at: string, name: string) =>
    `  - armchair: ${name}\n    at: { floor: ${at}, facing: south }\n    cloth: rose\n    size: 80 cm x 80 cm x 90 cm\n    making: 1\n    pieces: [{ piece: seat, size: 60 cm x 60 cm }]\n`;
  const items = `${PAINT}${chair("1 m x 1 m", "One")}${chair("4 m x 1 m", "Two")}`;
  // The door's middle: the south wall runs from the east corner, so 5 - 1.45 = 3.55 m from the west, 4 m from the north.
  const { input, scheme } = furnishedScheme(ROOM(items), {
    rose: { readsPlainFromM: 2.9, average: RED },
  });
  const views = new Map(input.items.map((i) => [i.item, i.views]));
  expect(views.get("armchair-one")?.doorM).toBeCloseTo(Math.hypot(2.55, 3), 6);
  expect(views.get("armchair-two")?.doorM).toBeCloseTo(Math.hypot(0.45, 3), 6);
  expect(views.get("armchair-one")?.seatM).toBeCloseTo(3, 6);
  expect(scheme.views[0]).toMatchObject({
    plainFromDoor: true,
    plainFromSeat: true,
    plainInHand: false,
    colour: RED,
  });
  expect(scheme.findings.find((f) => f.code === "main-reads-plain")).toMatchObject({
    level: "worth-a-look",
    of: ["rose"],
  });
  const near = furnishedScheme(ROOM(items), { rose: { readsPlainFromM: 8, average: RED } });
  expect(near.scheme.findings.map((f) => f.code)).not.toContain("main-reads-plain");
});

test("an object that is bought has a price with a date; what is the client's is not asked for one", () => {
  const codes = (card: string) =>
    furnishedScheme({
      ...ROOM("  - object: bench\n    at: { wall: east, from-left: 1 m }\n"),
      objects: { bench: `object: Bench\nshape: chest\nsize: 1 m x 40 cm x 45 cm\n${card}` },
    }).scheme.findings.flatMap((f) => (f.code === "price-old" ? [f.message] : []));
  expect(codes("price: { trade: 90 }")).toEqual(["The price of Bench has no date."]);
  expect(codes("price: { trade: 90, on: 2026-11-01 }")).toEqual([]);
  expect(codes("price: { trade: 90 }\nowner: client")).toEqual([]);
});

test("for machines: what is seen as plain numbers, the parts of each place a hundred", () => {
  const { scheme } = furnishedScheme(ROOM(`${PAINT}${RUG}${CURTAINS}`));
  const json = JSON.parse(JSON.stringify(schemeJson("test/den", scheme)));
  expect(json.room).toBe("test/den");
  for (const place of [...json.byZone, ...json.byWall].filter((p) => p.shares.length > 0))
    expect(
      place.shares.reduce((a: number, s: { hundredths: number }) => a + s.hundredths, 0),
      place.place,
    ).toBe(100);
  expect(json.phases.map((p: { phase: number }) => p.phase)).toEqual([0, 2, 3]);
  expect(json.knownShare).toBeCloseTo(scheme.knownShare, 12);
});

test("a rug that ends too near its table, and a picture that hangs too high, from where they stand", () => {
  const { input, scheme } = furnishedScheme(
    ROOM(
      `${RUG}  - object: table\n    at: { floor: 2.5 m x 2 m, facing: south }\n  - object: sea\n    at: { wall: east, from-left: 1 m, height: 1.6 m }\n`,
    ),
  );
  // The rug is 2 m to the east, 3 m to the south; the table 1 m by 2 m on its middle: 50 cm all round.
  expect(input.sizes.rugs[0]?.leastMarginMm).toBeCloseTo(500, 6);
  expect(input.sizes.pictures[0]?.centreMm).toBeCloseTo(1800, 6);
  expect(scheme.findings.map((f) => f.code)).toEqual(
    expect.arrayContaining(["rug-small", "picture-height"]),
  );
});

test("phases: what is there, then what each brings of colours and cloths, and what the room then is", () => {
  const { scheme } = furnishedScheme(
    ROOM(
      `${PAINT}${RUG}${CURTAINS}  - cushion: Pad\n    cloth: linen\n    size: 50 cm x 50 cm\n    edge: knife\n    making: 1\n`,
    ),
  );
  expect(
    scheme.phases.map(({ phase, items, newColours }) => ({ phase, items, newColours })),
  ).toEqual([
    { phase: 0, items: ["object-rug"], newColours: ["Bottle"] },
    { phase: 1, items: ["cushion-pad"], newColours: ["Rust"] },
    { phase: 2, items: ["paint-walls"], newColours: ["Cream"] },
    { phase: 3, items: ["curtains-bay"], newColours: [] },
  ]);
  expect(scheme.phases.map((p) => p.newRoles.map((r) => r.cloth))).toEqual([
    [],
    ["linen"],
    [],
    ["rose"],
  ]);
  expect(scheme.phases.at(-1)?.colours).toEqual(["Cream", "Rust", "Bottle"]);
  expect(scheme.phases.at(-1)?.plainShare).toBeCloseTo(scheme.plainShare ?? 0, 9);
});

test("an item's two names are told apart, and a lining counts among the cloths that are used", () => {
  const { input } = furnishedScheme(
    ROOM(
      `  - armchair: Bay\n    at: { floor: 2 m x 2 m, facing: south }\n    cloth: linen\n    size: 80 cm x 80 cm x 90 cm\n    making: 1\n    pieces: [{ piece: seat, size: 60 cm x 60 cm }]\n${CURTAINS.replace("    making: 1\n", "    lining: linen\n    making: 1\n")}`,
    ),
  );
  expect(input.items.map((i) => i.title)).toEqual(["Bay armchair", "Bay curtains"]);
  expect(input.uses.map((u) => [u.item, u.surface])).toContainEqual(["curtains-bay", "lining"]);
});

test("a colour of an accessory that the palette lacks: an error at its line, with the nearest", () => {
  const { scheme } = furnishedScheme(
    ROOM(PAINT, `accessories:\n  - { what: jug, height: table, colours: [Rusty] }\n`),
  );
  expect(scheme.diagnostics.map((d) => [d.code, d.severity, d.line, d.keyPath, d.hint])).toEqual([
    ["accessory-colour-unknown", "error", 11, "accessories[0].colours[0]", "Did you mean Rust?"],
  ]);
  const known = furnishedScheme(
    ROOM(PAINT, `accessories:\n  - { what: jug, height: table, colours: [rust] }\n`),
  );
  expect(known.scheme.diagnostics).toEqual([]);
});

test("patterns in contact are found from where the items stand, without a word in the file", () => {
  const sofa = `  - armchair: Sofa\n    at: { floor: 1 m x 3 m, facing: south }\n    cloth: rose\n    size: 80 cm x 80 cm x 90 cm\n    making: 1\n    pieces: [{ piece: seat, size: 60 cm x 60 cm }]\n`;
  const other = {
    ...CLOTHS,
    leaf: CLOTHS.rose.replace("Rose", "Leaf").replace("20 cm", "18 cm").replace(RED, GREEN),
  };
  const pad = `  - cushion: Pad\n    at: { on: armchair-sofa }\n    cloth: leaf\n    size: 50 cm x 50 cm\n    edge: knife\n    making: 1\n`;
  const { scheme } = furnishedScheme({ ...ROOM(`${PAINT}${sofa}${pad}`), cloths: other });
  expect(scheme.findings.find((f) => f.code === "patterns-touch")).toMatchObject({
    of: expect.arrayContaining(["armchair-sofa", "cushion-pad"]),
    evidence: { knownFrom: "placement" },
  });
});
