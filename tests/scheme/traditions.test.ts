import { expect, test } from "vitest";
import { type MadeCloth, type MadeRoom, schemeOf } from "./roomOf.ts";

// Each of these rooms is good in its own tradition, though it breaks a rule of another school: nothing may be complained of.
// All common practice, no source.

const FIRE = "fire: test certificate on file";
const RED = "#8e2f2a";
const GREEN = "#2f5446";
const CREAM = "#efe4cb";
const NAVY = "#2b3f63";
const BUFF = "#cdb48b";

const complaints = (room: MadeRoom): string[] =>
  schemeOf(room)
    .findings.filter((f) => f.level !== "works")
    .map((f) => `${f.code}: ${f.message}`);
const traditions = (room: MadeRoom): string[] => schemeOf(room).traditions.map((t) => t.name);

const check = (motifMm: number, colours: MadeCloth["colours"]): MadeCloth => ({
  kind: "check",
  motifMm,
  colours,
  card: FIRE,
});

const TARTANS: MadeRoom = {
  room: `colours:\n  - { colour: "${RED}", name: Red }\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "${NAVY}", name: Navy }`,
  cloths: {
    hunting: check(180, { [GREEN]: 0.55, [NAVY]: 0.3, [RED]: 0.15 }),
    dress: check(170, { [RED]: 0.55, [GREEN]: 0.25, [NAVY]: 0.2 }),
    muted: check(150, { [NAVY]: 0.5, [RED]: 0.3, [GREEN]: 0.2 }),
    linen: { kind: "plain", colours: { [CREAM]: 1 }, card: FIRE },
  },
  seen: [
    { item: "paper", cloth: "hunting", kind: "wallpaper", zone: "wall", areaMm2: 18e6 },
    { item: "bay", cloth: "dress", kind: "curtains", zone: "window", areaMm2: 6e6 },
    { item: "chair", cloth: "muted", kind: "armchair", zone: "seat", areaMm2: 3e6 },
    { item: "ceiling", cloth: "linen", kind: "cushion", zone: "seat", areaMm2: 4e6 },
  ],
  contacts: [
    { one: "bay", other: "chair", stated: true },
    { one: "paper", other: "bay", stated: false },
  ],
};

test("tartans together: near sizes that touch, on walls, windows and seats", () => {
  expect(traditions(TARTANS)).toContain("checks-together");
  expect(complaints(TARTANS)).toEqual([]);
});

test("the same cloths as geometrics are complained of: it is the check that makes the tradition", () => {
  const cloths = Object.fromEntries(
    Object.entries(TARTANS.cloths).map(([id, c]) => [
      id,
      c.kind === "check" ? { ...c, kind: "geometric" as const } : c,
    ]),
  );
  const codes = complaints({ ...TARTANS, cloths }).map((c) => c.split(":")[0]);
  expect(codes).toEqual(expect.arrayContaining(["rungs-close", "plain-short", "patterns-touch"]));
});

const TOILE: MadeRoom = {
  room: `colours:\n  - { colour: "${RED}", name: Madder }\n  - { colour: "${CREAM}", name: Cream }`,
  cloths: {
    shepherds: {
      kind: "large-print",
      motifMm: 320,
      colours: { [CREAM]: 0.78, [RED]: 0.22 },
      card: FIRE,
    },
    ticking: { kind: "stripe", motifMm: 280, colours: { [CREAM]: 0.6, [RED]: 0.4 }, card: FIRE },
  },
  seen: [
    { item: "paper", cloth: "shepherds", kind: "wallpaper", zone: "wall", areaMm2: 20e6 },
    { item: "bay", cloth: "shepherds", kind: "curtains", zone: "window", areaMm2: 6e6 },
    { item: "chair", cloth: "ticking", kind: "armchair", zone: "seat", areaMm2: 3e6 },
    { item: "pads", cloth: "ticking", kind: "cushion", zone: "seat", areaMm2: 1e6 },
    { item: "vase", colour: RED, kind: "paint", zone: "table", areaMm2: 1e6 },
  ],
  contacts: [{ one: "bay", other: "chair", stated: true }],
};

test("a toile with its ticking", () => {
  expect(traditions(TOILE)).toContain("toile-and-stripe");
  expect(complaints(TOILE)).toEqual([]);
});

test("a print with more grey than ink is no toile", () => {
  const cloths = {
    ...TOILE.cloths,
    shepherds: {
      ...(TOILE.cloths.shepherds as MadeCloth),
      colours: { [CREAM]: 0.7, [RED]: 0.09, "#61676f": 0.21 },
    },
  };
  expect(traditions({ ...TOILE, cloths })).not.toContain("toile-and-stripe");
});

test("a print of several inks with a stripe of another colour is no toile", () => {
  const cloths = {
    ...TOILE.cloths,
    shepherds: {
      ...(TOILE.cloths.shepherds as MadeCloth),
      colours: { [CREAM]: 0.6, [RED]: 0.2, [GREEN]: 0.2 },
    },
    ticking: {
      ...(TOILE.cloths.ticking as MadeCloth),
      colours: { [CREAM]: 0.6, [NAVY]: 0.4 },
    },
  };
  expect(traditions({ ...TOILE, cloths })).not.toContain("toile-and-stripe");
  expect(complaints({ ...TOILE, cloths }).join("\n")).toMatch(/patterns-touch/);
});

const leaf = (motifMm: number): MadeCloth => ({
  kind: "large-print",
  motifMm,
  colours: { [CREAM]: 0.5, [GREEN]: 0.35, [RED]: 0.15 },
  card: FIRE,
});
const BOTANICAL: MadeRoom = {
  room: `colours:\n  - { colour: "${GREEN}", name: Leaf }\n  - { colour: "${CREAM}", name: Cream }\n  - { colour: "${RED}", name: Berry }`,
  cloths: { hedge: leaf(300), thicket: leaf(280) },
  seen: [
    { item: "paper", cloth: "hedge", kind: "wallpaper", zone: "wall", areaMm2: 20e6 },
    { item: "bay", cloth: "hedge", kind: "curtains", zone: "window", areaMm2: 6e6 },
    { item: "bed", cloth: "thicket", kind: "armchair", zone: "seat", areaMm2: 22e6 },
  ],
  contacts: [{ one: "bay", other: "bed", stated: true }],
};

test("a print on a wall and a bed is not said to be on windows", () => {
  const seen = BOTANICAL.seen.filter((s) => s.kind !== "curtains");
  const said = schemeOf({ ...BOTANICAL, seen, contacts: [] })
    .findings.map((f) => f.message)
    .join(" ");
  expect(said).toContain("go all over the room: prints on so much of it read as one");
  expect(said).not.toMatch(/windows and seats/);
});

test("all-over botanicals: one print and its sister on paper, curtains and seats", () => {
  expect(traditions(BOTANICAL)).toContain("one-print-all-over");
  expect(complaints(BOTANICAL)).toEqual([]);
  // Two prints are not said to be one.
  const said = schemeOf(BOTANICAL)
    .findings.map((f) => f.message)
    .join(" ");
  expect(said).toContain("in one colouring, go all over the room");
  expect(said).not.toContain("one print on so much");
});

test("two large prints of different colourings do compete and touch", () => {
  const cloths = {
    ...BOTANICAL.cloths,
    thicket: { ...leaf(280), colours: { [NAVY]: 0.5, [BUFF]: 0.5 } },
  };
  const codes = complaints({ ...BOTANICAL, cloths }).map((c) => c.split(":")[0]);
  expect(codes).toEqual(expect.arrayContaining(["mains-compete", "rungs-close", "patterns-touch"]));
});

const LEOPARD: MadeRoom = {
  room: `colours:\n  - { colour: "${GREEN}", name: Leaf }\n  - { colour: "${CREAM}", name: Cream }\n  - { colour: "${RED}", name: Berry }`,
  cloths: {
    hedge: leaf(300),
    sprig: {
      kind: "small-print",
      motifMm: 32,
      colours: { [CREAM]: 0.8, [RED]: 0.2 },
      card: FIRE,
    },
    leopard: {
      kind: "irregular",
      motifMm: 30,
      animal: true,
      colours: { "#b98a4e": 0.6, "#3a2a1c": 0.4 },
      card: FIRE,
    },
    linen: { kind: "plain", colours: { [GREEN]: 1 }, card: FIRE },
  },
  seen: [
    { item: "walls", colour: CREAM, kind: "paint", zone: "wall", areaMm2: 30e6 },
    { item: "bay", cloth: "hedge", kind: "curtains", zone: "window", areaMm2: 6e6 },
    { item: "chair", cloth: "linen", kind: "armchair", zone: "seat", areaMm2: 11e6 },
    { item: "pair", cloth: "sprig", kind: "cushion", zone: "seat", areaMm2: 0.5e6 },
    { item: "spot", cloth: "leopard", kind: "cushion", zone: "seat", areaMm2: 0.3e6 },
    { item: "box", colour: RED, kind: "paint", zone: "table", areaMm2: 0.4e6 },
    { item: "fern", colour: GREEN, kind: "paint", zone: "table", areaMm2: 0.4e6 },
  ],
  contacts: [{ one: "pair", other: "spot", stated: true }],
};

test("an animal marking as a neutral: of no colour, and beside anything", () => {
  expect(complaints(LEOPARD)).toEqual([]);
});

test("the same marking as no animal strays in colour, and stands too near in size", () => {
  const cloths = {
    ...LEOPARD.cloths,
    leopard: { ...(LEOPARD.cloths.leopard as MadeCloth), animal: false },
  };
  const codes = complaints({ ...LEOPARD, cloths }).map((c) => c.split(":")[0]);
  expect(codes).toEqual(
    expect.arrayContaining(["rungs-close", "colour-outside", "patterns-touch"]),
  );
});

const weave = (hex: string): MadeCloth => ({
  kind: "textured-plain",
  colours: { [hex]: 1 },
  card: FIRE,
});
const TEXTURES: MadeRoom = {
  room: `colours:\n  - { colour: "#e6dcc8", name: Oat }\n  - { colour: "#5a5348", name: Peat }\n  - { colour: "${RED}", name: Berry }`,
  cloths: {
    boucle: weave("#e6dcc8"),
    wool: weave("#5a5348"),
    linen: weave("#e2d7c1"),
    poppy: {
      kind: "large-print",
      motifMm: 150,
      colours: { "#e6dcc8": 0.7, [RED]: 0.3 },
      card: FIRE,
    },
  },
  seen: [
    { item: "walls", colour: "#e6dcc8", kind: "paint", zone: "wall", areaMm2: 40e6 },
    { item: "bay", cloth: "linen", kind: "curtains", zone: "window", areaMm2: 6e6 },
    { item: "sofa", cloth: "boucle", kind: "armchair", zone: "seat", areaMm2: 4e6 },
    { item: "chair", cloth: "wool", kind: "armchair", zone: "seat", areaMm2: 3e6 },
    { item: "pair", cloth: "poppy", kind: "cushion", zone: "seat", areaMm2: 0.5e6 },
    { item: "rug", colour: "#5a5348", kind: "paint", zone: "floor", areaMm2: 2e6 },
    { item: "box", colour: RED, kind: "paint", zone: "table", areaMm2: 0.4e6 },
    { item: "lamp", colour: RED, kind: "paint", zone: "wall", areaMm2: 0.2e6 },
    { item: "tray", colour: "#5a5348", kind: "paint", zone: "table", areaMm2: 0.4e6 },
  ],
};

test("a room of textures with one print, nearly all of one colour", () => {
  expect(traditions(TEXTURES)).toContain("room-of-textures");
  expect(complaints(TEXTURES)).toEqual([]);
});

test("a room of textures with no print at all is not asked for a main cloth; one of two plains is", () => {
  const { poppy: _, ...cloths } = TEXTURES.cloths;
  const seen = TEXTURES.seen.filter((s) => s.cloth !== "poppy");
  const codes = (room: MadeRoom) => schemeOf(room).findings.map((f) => f.code);
  expect(codes({ ...TEXTURES, cloths, seen })).not.toContain("no-main-cloth");
  const two = { boucle: weave("#e6dcc8"), velvet: { ...weave(RED), kind: "plain" as const } };
  expect(codes({ ...TEXTURES, cloths: two, seen: TEXTURES.seen.slice(0, 1) })).toContain(
    "no-main-cloth",
  );
});
