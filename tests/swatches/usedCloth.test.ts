import { expect, test } from "vitest";
import { disagreements } from "../../src/swatches/disagreements.ts";
import { usedCloth } from "../../src/swatches/usedCloth.ts";
import { card, measure } from "./cards.ts";

test("the card's values, and where they come from", () => {
  const used = usedCloth(
    card(`cloth: Fern\nkind: small-print\nmotif: 5 cm\nrepeat: { up: 64 cm }\nanimal: yes`),
    measure(),
    null,
  );
  expect(used).toMatchObject({
    kind: "small-print",
    kindFrom: "declared",
    motifMm: 50,
    motifFrom: "declared",
    repeatFrom: "declared",
    animal: true,
  });
  expect(used.repeat).toEqual({
    upMm: 640,
    acrossMm: null,
    match: "straight",
    fromSelvedgeMm: null,
  });
  expect(used.coloursFrom).toBe("measured");
});

test("the photograph fills in what the card leaves open; without one it is unknown", () => {
  const bare = card("cloth: Fern");
  expect(usedCloth(bare, measure(), null)).toMatchObject({
    kind: "large-print",
    kindFrom: "measured",
    motifMm: 300,
    repeatFrom: "measured",
    busyness: 0.5,
  });
  expect(usedCloth(bare, null, null)).toMatchObject({
    kind: null,
    kindFrom: "unknown",
    motifMm: null,
    repeat: null,
    repeatFrom: "unknown",
    colours: [],
    average: null,
  });
});

test("colours by hand: shares sum to one, largest first, the silent ones divide the rest", () => {
  const used = usedCloth(
    card(
      `cloth: Fern\ncolours: [{ colour: "#efe3c8" }, { colour: "#3a5f4b", share: 60 %, name: bottle }, { colour: "#aa3311" }]`,
    ),
    null,
    null,
  );
  expect(used.colours.map((c) => [c.hex, c.share])).toEqual([
    ["#3a5f4b", 0.6],
    ["#efe3c8", 0.2],
    ["#aa3311", 0.2],
  ]);
  expect(used.colours[0]?.name).toBe("bottle");
  expect(used.colours.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 12);
  expect(used.average).toMatch(/^#[0-9a-f]{6}$/);
});

test("within tolerance card and photograph agree; beyond it both values are kept", () => {
  const agree = card(
    `cloth: Fern\nkind: large-print\nmotif: 30 cm\nrepeat: { up: 65 cm, across: 34 cm, match: straight }\ncolours: [{ colour: "#efe3c8" }]`,
  );
  expect(disagreements(agree, measure())).toEqual([]);
  const differ = card(
    `cloth: Fern\nkind: geometric\nmotif: 5 cm\nrepeat: { up: 70 cm, across: 34 cm, match: half-drop }\ncolours: [{ colour: "#aa0000" }]`,
  );
  expect(disagreements(differ, measure())).toEqual([
    {
      what: "repeat",
      declared: "70\u202fcm up, 34\u202fcm across, half-drop",
      measured: "64\u202fcm up, 34.3\u202fcm across, straight",
    },
    { what: "kind", declared: "geometric", measured: "large-print" },
    { what: "motif", declared: "5\u202fcm", measured: "30\u202fcm" },
    { what: "colours", declared: "#aa0000", measured: "#efe3c8, #3a5f4b" },
  ]);
  expect(disagreements(differ, null)).toEqual([]);
});

test("a photograph that is not sure of its repeat contradicts nobody", () => {
  const repeat = { ...measure().pattern.repeat, sure: false } as never;
  expect(disagreements(card(`cloth: Fern\nrepeat: { up: 20 cm }`), measure({ repeat }))).toEqual(
    [],
  );
});

test("a card that lets a pattern lie upside down is contradicted by one that is not the same so", () => {
  const says = (runs: string) => card(`cloth: Fern\nruns: ${runs}`);
  const oneWay = measure({ runs: "one-way" });
  expect(disagreements(says("two-way"), oneWay)).toEqual([
    { what: "runs", declared: "two-way", measured: "one-way, not the same upside down" },
  ]);
  expect(disagreements(says("any-way"), oneWay)).toHaveLength(1);
  // What is the same upside down may be cut one way for its sheen.
  expect(disagreements(says("one-way"), measure({ runs: "two-way" }))).toEqual([]);
  expect(disagreements(says("two-way"), measure({ runs: null }))).toEqual([]);
  const unsure = { ...measure().pattern.repeat, sure: false } as never;
  expect(disagreements(says("two-way"), measure({ runs: "one-way", repeat: unsure }))).toEqual([]);
});

test("a card that says how a pattern runs is not asked", () => {
  const confirm = [{ what: "pattern.runs", why: "Has it a top?" }];
  const asked = (text: string) => usedCloth(card(text), measure({}, { confirm }), null).confirm;
  expect(asked("cloth: Fern")).toEqual(["Has it a top?"]);
  expect(asked("cloth: Fern\nruns: one-way")).toEqual([]);
});

test("what the photograph could not tell is asked, unless the card tells it", () => {
  const confirm = [
    { what: "pattern.repeat", why: "Measure the repeat." },
    { what: "colours", why: "Look at the light." },
  ];
  expect(usedCloth(card("cloth: Fern"), measure({}, { confirm }), null).confirm).toEqual([
    "Measure the repeat.",
    "Look at the light.",
  ]);
  expect(
    usedCloth(card("cloth: Fern\nrepeat: { up: 64 cm }"), measure({}, { confirm }), null).confirm,
  ).toEqual(["Look at the light."]);
});
