import { expect, test } from "vitest";
import { clothFacts, repeatIsMeasured } from "../../src/swatches/clothFacts.ts";
import { usedCloth } from "../../src/swatches/usedCloth.ts";
import { card, measure } from "./cards.ts";

const facts = (text: string, pattern?: Parameters<typeof measure>[0]) => {
  const record = card(text);
  return clothFacts(record, pattern ? usedCloth(record, measure(pattern), null) : null);
};

test("what the card declares counts, to the letter", () => {
  const found = facts(
    `cloth: Fern\nwidth: 54"\nrepeat: { up: 25 1/4", across: 13 1/2", match: half-drop, from-selvedge: 3" }`,
    {},
  );
  expect(found.usableWidth?.mm.toFraction()).toBe("6858/5");
  expect(found.repeat?.up.mm.toFraction()).toBe("12827/20");
  expect(found.repeat).toMatchObject({ match: "half-drop" });
  expect(found.repeat?.fromSelvedge?.toMm()).toBeCloseTo(76.2, 9);
  expect(found).toMatchObject({ type: "cloth", nap: false, roll: null, mayTurn: false });
});

test("a repeat that the card leaves out comes from a sure photograph, and is known as measured", () => {
  const record = card(`cloth: Fern\nwidth: 54"`);
  const sure = usedCloth(record, measure(), null);
  expect(clothFacts(record, sure).repeat?.up.toMm()).toBe(640);
  expect(repeatIsMeasured(record, sure)).toBe(true);
  const unsure = usedCloth(
    record,
    measure({ repeat: { ...(measure().pattern.repeat as never as object), sure: false } as never }),
    null,
  );
  expect(clothFacts(record, unsure).repeat).toBeNull();
  const declared = card(`cloth: Fern\nrepeat: { up: 60 cm }`);
  expect(repeatIsMeasured(declared, usedCloth(declared, measure(), null))).toBe(false);
});

test("a cloth that the card calls plain has no repeat, whatever its weave shows", () => {
  expect(facts(`cloth: Linen\nwidth: 54"\nkind: plain`, {}).repeat).toBeNull();
});

test("what a photograph shows of a weave's own repeat is matched only where the card says so, and keeps the weave from turning", () => {
  const WEAVE = { kind: "textured-plain" } as const;
  const alone = facts(`cloth: Bone\nwidth: 54"`, WEAVE);
  expect(alone).toMatchObject({ repeat: null, repeatUnknown: false, mayTurn: false });
  expect(facts(`cloth: Bone\nwidth: 54"`, { ...WEAVE, repeat: null }).mayTurn).toBe(true);
  expect(facts(`cloth: Bone\nkind: textured-plain`, WEAVE)).toMatchObject({
    repeat: null,
    mayTurn: true,
  });
  // Called a pattern by its card, it is matched by what was measured; and by the card's repeat, whatever it is called.
  expect(facts(`cloth: Bone\nkind: geometric`, WEAVE).repeat?.up.toMm()).toBe(640);
  expect(facts(`cloth: Bone\nrepeat: { up: 6 cm }`, WEAVE).repeat?.up.toMm()).toBe(60);
});

test("of a weave's own repeat she is asked until the card says what it is", () => {
  const why = "It comes again.";
  const asked = (text: string) =>
    usedCloth(
      card(text),
      measure({ kind: "textured-plain" }, { confirm: [{ what: "pattern.repeat", why }] }),
      null,
    ).confirm;
  expect(asked(`cloth: Bone`)).toEqual([why]);
  expect(asked(`cloth: Bone\nkind: textured-plain`)).toEqual([]);
  expect(asked(`cloth: Bone\nrepeat: { up: 6 cm }`)).toEqual([]);
});

test("a match that the card leaves out is straight", () => {
  expect(facts(`cloth: Fern\nrepeat: { up: 60 cm }`).repeat).toMatchObject({
    match: "straight",
    across: null,
    fromSelvedge: null,
  });
});

test.each([
  ["plain", "kind: plain", true],
  ["plain with a nap", "kind: plain\nnap: yes", false],
  ["any way", "runs: any-way\nrepeat: { up: 10 cm }", true],
  ["any way with a nap", "runs: any-way\nnap: yes", false],
  ["one way, plain", "kind: plain\nruns: one-way", false],
  ["nobody knows its kind", 'width: 54"', false],
  ["a lining", "type: lining", true],
  ["a lining with a repeat", "type: lining\nrepeat: { up: 10 cm }", false],
])("may it turn: %s", (_, text, turns) => {
  expect(facts(`cloth: Fern\n${text}`).mayTurn).toBe(turns);
});

test("it runs one way where its card says so, or else its photograph for sure", () => {
  const oneWay = (...args: Parameters<typeof facts>) => facts(...args).oneWay ?? false;
  expect(oneWay("cloth: Fern\nruns: one-way")).toBe(true);
  expect(oneWay("cloth: Fern", { runs: "one-way" })).toBe(true);
  expect(oneWay("cloth: Fern\nruns: two-way", { runs: "one-way" })).toBe(false);
  expect(oneWay("cloth: Fern", { runs: "two-way" })).toBe(false);
  const unsure = { ...measure().pattern.repeat, sure: false } as never;
  expect(oneWay("cloth: Fern", { runs: "one-way", repeat: unsure })).toBe(false);
});

test("a wallcovering is known by its roll, and is as wide as it", () => {
  const found = facts(`cloth: Fern\nroll: { width: 53 cm, length: 10.05 m }`);
  expect(found.type).toBe("wallcovering");
  expect(found.usableWidth?.toMm()).toBe(530);
});

test("a repeat is unknown where card or photograph shows a pattern and neither tells how it repeats for certain", () => {
  const unknown = (...args: Parameters<typeof facts>) => facts(...args).repeatUnknown;
  const bare = "cloth: Fern";
  expect(unknown(bare, { kind: "small-print", repeat: null })).toBe(true);
  expect(unknown(bare, {})).toBe(false);
  expect(unknown(bare, { kind: "stripe", repeat: null })).toBe(false);
  expect(unknown(`${bare}\nkind: plain`, { kind: "small-print", repeat: null })).toBe(false);
  expect(unknown(`${bare}\nmatched: no`, { kind: "irregular", repeat: null })).toBe(false);
  // Nobody knows whether it has a pattern at all.
  expect(unknown(bare)).toBe(false);
});
