import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// What a person gets wrong about a room and its money, through real files: each is said at its line, and nothing throws.

const STUDIO = `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: EUR
paper: a3
tax: { goods: 20, services: 20 }
makers: { bench: { name: Bench, makes: [cushion, curtains], rates: { cushion: 30 per item } } }`;
const PROJECT = `project: Quay
client: { name: Nobody }
status: proposed
dated: 2026-11-20`;
const LINEN = `cloth: Linen
width: 137 cm
kind: plain
colours: [{ colour: "#8a7a66" }]
price: { trade: 10, per: metre, on: 2026-10-01 }`;
const ROOM = `room: Den
height: 2.5 m
floor: 4 m x 3 m
walls:
  - { wall: north, length: 4 m, windows: [{ window: bay, from-left: 1 m, size: 1.2 m x 1.5 m, sill: 80 cm }] }
colours: [{ colour: "#8a7a66", name: Sand }, { colour: "#2f5446", name: Bottle }]
cloths: [linen]
items:
  - cushion: Seat
    cloth: linen
    size: 50 cm x 50 cm
    edge: knife
    maker: bench
`;
const CHAIR = `  - object: chest
    at: `;

const files = (more: {
  readonly studio?: (text: string) => string;
  readonly project?: string;
  readonly cloth?: (text: string) => string;
  readonly items?: string;
  readonly room?: (text: string) => string;
}) => ({
  "studio.md": (more.studio ?? ((t: string) => t))(STUDIO),
  "objects/chest.md": `object: Chest\nshape: chest\nsize: 1 m x 50 cm x 80 cm`,
  "cloths/linen.md": (more.cloth ?? ((t: string) => t))(LINEN),
  "projects/quay/project.md": `${PROJECT}\n${more.project ?? ""}`,
  "projects/quay/den.md": `${(more.room ?? ((t: string) => t))(ROOM)}${more.items ?? ""}`,
});
const errors = async (more: Parameters<typeof files>[0]): Promise<string[]> =>
  saidOf(await computedFolder(files(more)));
const warnings = async (more: Parameters<typeof files>[0]): Promise<string[]> =>
  saidOf(await computedFolder(files(more)), "warning");

test("the room as it stands has no fault", async () => {
  expect(await errors({})).toEqual([]);
  expect(await warnings({})).toEqual([]);
});

test("contradictory placements", async () => {
  // Line 15 is the item's first, since the front matter begins on line 2.
  const at = async (place: string) => [
    ...(await errors({ items: `${CHAIR}${place}\n` })),
    ...(await warnings({ items: `${CHAIR}${place}\n` })),
  ];
  const one = [expect.stringMatching(/^den\.md:16 /)];
  expect(await at("{ wall: north, from-left: 1 m, floor: 1 m x 1 m }")).toEqual(one);
  expect(await at("{ on: cushion-seat, floor: 1 m x 1 m }")).toEqual(one);
  expect(await at("{ on: object-chest }")).toEqual(one);
  expect(await at("{ floor: 9 m x 1 m, facing: south }")).toEqual(one);
  // Two chests in one place.
  const two = `${CHAIR}{ floor: 2 m x 1 m, facing: south }\n${CHAIR}{ floor: 2 m x 1 m, facing: south }\n`;
  expect([...(await errors({ items: two })), ...(await warnings({ items: two }))]).toEqual([
    expect.stringMatching(/^den\.md:1[5678] /),
  ]);
});

test("an item outside its wall", async () => {
  expect(await errors({ items: `${CHAIR}{ wall: north, from-left: 3.5 m }\n` })).toEqual([
    expect.stringMatching(/^den\.md:16 /),
  ]);
  expect(await errors({ items: `${CHAIR}{ wall: nroth, from-left: 1 m }\n` })).toEqual([
    "den.md:16 wall-unknown",
  ]);
});

test("a colour of an accessory that the palette lacks", async () => {
  const accessory = (colour: string) =>
    errors({
      items: `accessories:\n  - { what: jug, height: table, colours: [${colour}] }\n`,
    });
  expect(await accessory("Sand")).toEqual([]);
  expect(await accessory("Bottel")).toEqual(["den.md:16 accessory-colour-unknown"]);
});

test("a waiver for nothing, and one of a misspelt finding", async () => {
  const waiver = (code: string) => ({
    items: `accept:\n  - { finding: ${code}, because: I like it. }\n`,
  });
  expect(await warnings(waiver("mains-compete"))).toEqual(["den.md:16 waiver-unused"]);
  expect(await errors(waiver("mains-competes"))).toEqual(["den.md:16 finding-unknown"]);
});

test("a phase that depends on a later one", async () => {
  const after = (phase: string) =>
    errors({
      items: `    after: [curtains-bay]\n${phase}  - curtains: Bay\n    at: bay\n    cloth: linen\n    pole: 160 cm\n    to: floor\n    heading: pencil-pleat\n    making: 200\n`,
    });
  expect(await after("")).toEqual(["den.md:15 phase-before-its-need"]);
  expect(await after("    phase: 3\n")).toEqual([]);
});

test("a negative price, and tax over a hundred per cent", async () => {
  expect(await errors({ cloth: (t) => t.replace("trade: 10", "trade: -10") })).toContain(
    "linen.md:6 amount-negative",
  );
  expect(await errors({ studio: (t) => t.replace("goods: 20", "goods: 120") })).toContain(
    "studio.md:7 percent-unreadable",
  );
});

test("instalments that do not sum, and two that take the rest", async () => {
  const parts = (first: string, second: string) =>
    errors({
      project: `instalments:\n  - { deposit: ${first}, due: approval }\n  - { balance: ${second}, due: fitting }`,
    });
  expect(await parts("50%", "rest")).toEqual([]);
  expect(await parts("50%", "40%")).toEqual(["project.md:8 instalments-do-not-sum"]);
  expect(await parts("60%", "50%")).toEqual(["project.md:8 instalments-too-much"]);
  expect(await parts("rest", "rest")).toEqual([
    expect.stringMatching(/^project\.md:[78] instalment/),
  ]);
});

test("mixed currencies, each at its line", async () => {
  expect(
    await errors({
      project: "budget: £ 900",
      cloth: (t) => t.replace("trade: 10", 'trade: "$ 10"'),
    }),
  ).toEqual(["linen.md:6 currency-other", "project.md:6 currency-other"]);
});

test("a fault of the project's money is said once, however many ways an item has", async () => {
  const found = await errors({
    project:
      "instalments:\n  - { deposit: 60%, due: approval }\n  - { balance: 50%, due: fitting }",
    items: `  - cushion: Stool\n    size: 40 cm x 40 cm\n    edge: knife\n    maker: bench\n    options:\n      - { option: In linen, cloth: linen }\n      - { option: Larger, cloth: linen, size: 60 cm x 60 cm }\n`,
  });
  expect(found.filter((one) => one.includes("instalments"))).toEqual([
    "project.md:8 instalments-too-much",
  ]);
});

test("a key that cannot stand where nothing else could has a hint that ends", async () => {
  const computed = await computedFolder(
    files({ items: `${CHAIR}{ wall: north, from-left: 1 m, height: 10 cm, was: 2 m }\n` }),
  );
  const said = computed.diagnostics.filter((d) => d.code === "key-unknown");
  expect(said.map((d) => d.hint)).toEqual(["Take it out."]);
});
