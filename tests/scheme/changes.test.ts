import { expect, test } from "vitest";
import { schemeChanges } from "../../src/scheme/changes.ts";
import { type MadeCloth, type MadeRoom, schemeOf } from "./roomOf.ts";

const CREAM = "#efe4cb";
const GREEN = "#2f5446";
const RUST = "#9b4529";
const FIRE = "fire: passes";

const room = (chair: MadeCloth): MadeRoom => ({
  room: `colours:\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "${RUST}", name: Rust }`,
  cloths: {
    fern: {
      kind: "large-print",
      motifMm: 180,
      colours: { [CREAM]: 0.6, [GREEN]: 0.4 },
      card: FIRE,
    },
    chair,
  },
  seen: [
    { item: "walls", kind: "paint", colour: CREAM, zone: "wall", areaMm2: 20e6 },
    { item: "bay", kind: "curtains", cloth: "fern", zone: "window", areaMm2: 6e6 },
    { item: "seat", kind: "armchair", cloth: "chair", areaMm2: 4e6 },
  ],
});
const plain: MadeCloth = { kind: "plain", colours: { [RUST]: 1 }, card: FIRE };
const check: MadeCloth = {
  kind: "geometric",
  motifMm: 170,
  colours: { [GREEN]: 1 },
  card: FIRE,
};

test("what is otherwise: the plain share, the colours' places; for the studio what is then to be looked at", () => {
  const { client, studio } = schemeChanges(schemeOf(room(plain)), schemeOf(room(check)), "en-GB");
  // 24 of 30 m2 plain; then 20 of 30.
  expect(client).toEqual([
    "67 % of what is seen is plain, instead of 80 %.",
    "Bottle is seen in 2 places instead of 1 and Rust is seen in 0 places instead of 1.",
  ]);
  expect(studio.some((w) => /^New: Fern and Chair are close in size/.test(w))).toBe(true);
  expect(studio.some((w) => w.startsWith("Now: Rust is seen nowhere yet"))).toBe(true);
  const back = schemeChanges(schemeOf(room(check)), schemeOf(room(plain)), "en-GB").studio;
  expect(back.some((w) => /^Gone: Fern and Chair are close in size/.test(w))).toBe(true);
});

test("nothing is said of a change that changes nothing", () => {
  expect(schemeChanges(schemeOf(room(plain)), schemeOf(room(plain)), "en-GB")).toEqual({
    client: [],
    studio: [],
  });
});
