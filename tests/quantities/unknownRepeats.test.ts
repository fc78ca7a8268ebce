// A patterned cloth whose repeat nobody knows: lengths reckoned without it may be too little, so it is said and nothing is for cutting.
import { expect, test } from "vitest";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { quantitiesOf } from "./studioOf.ts";

const ROOM = `room: A
measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }
items:
  - cushion: One
    cloth: fern
    count: 2
    size: 50 cm x 50 cm
    maker: anna
`;
const STUDIO = `studio: Test
language: en-GB
units: centimetres
currency: EUR
paper: a3
makers: { anna: { name: Anna, makes: [cushion] } }`;
const PROJECT = `project: Test
client: { name: Nobody }
status: ordered
receipts:
  - { cloth: fern, lot: A1, maker: anna, length: 5 m, width: 137 cm, on: 2026-11-20 }`;

/** Why nothing may be cut from a card, and what is said at the card. */
function of(card: string) {
  const found = quantitiesOf({
    studio: STUDIO,
    project: PROJECT,
    cloths: { fern: `cloth: Fern\nwidth: 137 cm\n${card}` },
    rooms: { a: ROOM },
  });
  return {
    found,
    why: found.cloths[0]?.plan.notForCutting,
    said: found.diagnostics.filter((each) => each.code === "repeat-unknown"),
    cards: found.diagnostics.filter((each) => each.file === "cloths/fern.md"),
  };
}

test("a print without a repeat is told at its card, and nothing of it is for cutting, though it came and all is measured", () => {
  const { found, why, said } = of("kind: large-print");
  expect(said).toMatchObject([{ severity: "warning", file: "cloths/fern.md", line: 2 }]);
  expect(said[0]?.hint).toContain("matched: no");
  expect(why).toEqual(["How its pattern repeats is not known."]);
  expect(found.cloths[0]?.plan.forCutting).toBe(false);
  expect(quantitiesText(found, "centimetres", "en-US")).toContain("repeat not known");
});

test("of a card that says nothing of its pattern and shows none it is asked whether it has one", () => {
  const { found, cards } = of('colours: [{ colour: "#ccbbaa" }]');
  expect(cards).toMatchObject([{ code: "pattern-unsaid", severity: "warning", line: 2 }]);
  expect(cards[0]?.hint).toContain("kind: plain");
  // It may be a plain: it is cut as one, once somebody has looked at it.
  expect(found.cloths[0]?.plan.forCutting).toBe(true);
  for (const said of ["kind: plain", "matched: no", "repeat: { up: 64 cm }", "type: lining"])
    expect(of(said).cards.map((d) => d.code)).not.toContain("pattern-unsaid");
});

test.each([
  ["its repeat is stated", "kind: large-print\nrepeat: { up: 64 cm, across: 68.5 cm }"],
  ["nothing of it has to meet", "kind: irregular\nmatched: no"],
  ["it is plain", "kind: plain"],
  ["it is a weave", "kind: textured-plain"],
  ["it is a stripe, which runs on along the length", "kind: stripe"],
])("nothing is said, and it is for cutting, where %s", (_why, card) => {
  const { found, why, said } = of(card);
  expect(said).toEqual([]);
  expect(why).toEqual([]);
  expect(found.cloths[0]?.plan.forCutting).toBe(true);
});

test("a stripe along the cloth has a repeat across alone: planned as one that nothing matches along", () => {
  const { found: across, cards } = of(
    "kind: stripe\nrepeat: { across: 20 cm, from-selvedge: 10 cm }",
  );
  const known = of(
    "kind: stripe\nrepeat: { up: 1 cm, across: 20 cm, match: free, from-selvedge: 10 cm }",
  ).found;
  expect(cards).toEqual([]);
  const placed = (found: typeof across) => found.cloths[0]?.plan.pieces;
  expect(placed(across)).toEqual(placed(known));
  expect(across.cloths[0]?.buy.text).toBe(known.cloths[0]?.buy.text);
  const text = quantitiesText(across, "centimetres", "en-GB");
  expect(text).toMatch(/repeat 20\s?cm across, nothing to match along it/);
});

test("of a stripe without a repeat it is told that its bands cannot be set out; of another kind a repeat across alone is too little", () => {
  expect(of("kind: stripe").cards).toMatchObject([
    { code: "stripe-repeat-unknown", severity: "warning", line: 2 },
  ]);
  expect(of("kind: stripe\nmatched: no").cards).toEqual([]);
  const print = of("kind: large-print\nrepeat: { across: 20 cm }");
  expect(print.said[0]?.message).toBe(
    "Fern is patterned, and its repeat along the length is not known.",
  );
  expect(print.why).toEqual(["How its pattern repeats is not known."]);
});
