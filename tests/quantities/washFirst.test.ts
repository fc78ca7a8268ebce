// Cloth that is washed before it is cut. Length ÷ (1 − s): trade note, "washable cotton or linen shrinkage 3-5 %: divide by 1 - s"; that
// the cloth is washed whole, and measured again, is common practice, no source.
import { expect, test } from "vitest";
import { PROJECT, quantitiesOf, type SmallStudio, STUDIO_CM } from "./studioOf.ts";

const MEASURED = "measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }";
const CUSHIONS = `  - cushion: One
    cloth: fern
    count: 5
    size: 50 cm x 50 cm
`;
const CURTAINS = `  - curtains: Bay
    cloth: fern
    pole: 100 cm
    drop: 230 cm
    heading: pinch-pleat
`;
const REPEAT = "repeat: { up: 64 cm, across: 68.5 cm }";
const WASHED = "shrinkage: 4 %\nshrinkage-across: 2 %\nwash-first: yes";

function of(card: string, { items = CUSHIONS, receipts = "", width = "137 cm" } = {}) {
  const small: SmallStudio = {
    studio: STUDIO_CM,
    project: receipts ? `${PROJECT}\nreceipts:\n${receipts}` : PROJECT,
    cloths: { fern: `cloth: Fern\nwidth: ${width}\n${card}` },
    rooms: { a: `room: A\nfloor: 5 m x 4 m\nheight: 3 m\n${MEASURED}\nitems:\n${items}` },
  };
  const found = quantitiesOf(small);
  const [fern] = found.cloths;
  if (!fern) throw new Error("nothing planned");
  return { fern, diagnostics: found.diagnostics, items: found.items };
}

test.each([
  ["plain", "kind: plain", "kind: plain"],
  // 64 cm less 4 %, 68.5 cm less 2 %.
  ["in register", REPEAT, "repeat: { up: 61.44 cm, across: 67.13 cm }"],
])("it is planned as the washed cloth is, and so much more is bought: %s", (_, before, after) => {
  const washed = of(`${before}\n${WASHED}`);
  // 137 cm less 2 %.
  const same = of(after, { width: "134.26 cm" });
  expect(washed.fern.plan.pieces).toEqual(same.fern.plan.pieces);
  expect(washed.fern.usableWidth.toMm()).toBeCloseTo(1342.6, 6);
  const need = same.fern.needed.need.toMm() / 0.96;
  expect(washed.fern.needed.need.toMm()).toBeCloseTo(need, 6);
  // Sold by the tenth of a metre.
  expect(washed.fern.buy.length.toMm()).toBeCloseTo(Math.ceil(need / 100 - 1e-9) * 100, 6);
  const [line] = washed.fern.working.filter(({ what }) => what === "To buy");
  expect(line?.sum).toContain("÷ (1 − 4 %)");
  expect(washed.fern.working.map(({ what }) => what)).not.toContain("Shrinkage");
});

test("a narrower cloth may hold a piece less across: what washing takes of the width is reckoned with", () => {
  // 2 × (50 + 2 × 1.5) = 106 on 107; washed, 104.86, only one goes across.
  const card = "kind: plain\nshrinkage: 0 %\nshrinkage-across: 2 %";
  const dry = of(card, { width: "107 cm" });
  const wet = of(`${card}\nwash-first: yes`, { width: "107 cm" });
  expect(new Set(dry.fern.plan.pieces.map((p) => p.x.toMm())).size).toBeGreaterThan(1);
  expect(new Set(wet.fern.plan.pieces.map((p) => p.x.toMm())).size).toBe(1);
  expect(wet.fern.plan.length.toMm()).toBeGreaterThan(1.5 * dry.fern.plan.length.toMm());
});

test("of whole repeats as many are bought as are cut, since each shrinks with the cloth", () => {
  const { fern } = of(`${REPEAT}\n${WASHED}\nprice: { trade: 20, per: metre, sold-by: repeat }`);
  const repeats = fern.buy.length.toMm() / 640;
  expect(repeats).toBeCloseTo(Math.round(repeats), 9);
  expect(repeats * 614.4).toBeGreaterThanOrEqual(
    fern.plan.length.toMm() + fern.spare.toMm() - 1e-6,
  );
  expect((repeats - 1) * 614.4).toBeLessThan(fern.plan.length.toMm() + fern.spare.toMm());
});

test("a bolt holds less when it is washed", () => {
  // A cut of 258 cm: a bolt of 2.6 m holds one before, and washed, 249.6 cm, none.
  const bolt = "price: { trade: 20, per: metre, bolt: { length: 2.6 m, trade: 18 } }";
  const plain = "kind: plain\nshrinkage: 0 %";
  expect(of(`${plain}\n${bolt}`, { items: CURTAINS }).diagnostics).toEqual([]);
  const { diagnostics } = of(`kind: plain\n${WASHED}\n${bolt}`, { items: CURTAINS });
  expect(diagnostics.map(({ code }) => code)).toEqual(Array(2).fill("piece-longer-than-bolt"));
});

test("curtains of it are not cut longer again", () => {
  const heights = (card: string) =>
    new Set(of(card, { items: CURTAINS }).fern.plan.pieces.map((p) => p.height.toMm()));
  // 230 + 8 + 20 cm.
  expect(heights(`kind: plain\n${WASHED}`)).toContain(2580);
  expect(heights("kind: plain\nshrinkage: 4 %")).not.toContain(2580);
});

const needs = of(`${REPEAT}\n${WASHED}`).fern.needed.need.toMm();
const receipt = (mm: number, more = "") => `  - { cloth: fern, lot: A, length: ${mm} mm${more} }`;

test("until it is washed, and its repeat measured again, it is not for cutting; whether it is enough is known when it comes", () => {
  const card = `${REPEAT}\n${WASHED}`;
  const came = of(card, { receipts: receipt(Math.ceil(needs)) });
  expect(came.fern.plan.notForCutting).toEqual([expect.stringContaining("still to be washed")]);
  const short = of(card, { receipts: receipt(Math.floor(needs) - 650) });
  expect(short.diagnostics.map(({ code }) => code)).toContain("received-not-enough");
  const washed = of(card, {
    receipts: receipt(Math.ceil(needs * 0.96), ", washed: 2026-11-20"),
  });
  expect(washed.fern.plan.notForCutting).toEqual([expect.stringContaining("Its repeat")]);
  const measured = of(card, {
    receipts: receipt(
      Math.ceil(needs * 0.965),
      ", washed: 2026-11-20, repeat: 61.6 cm, width: 135 cm",
    ),
  });
  expect(measured.fern.plan).toMatchObject({ forCutting: true, notForCutting: [] });
  expect(measured.fern.plan.pattern?.vertical.toMm()).toBeCloseTo(616, 6);
  expect(measured.fern.usableWidth.toMm()).toBeCloseTo(1350, 6);
  expect(measured.diagnostics.map(({ code }) => code)).toEqual([]);
});

test("a plain cloth needs no repeat; two lengths of a lot are each washed for themselves", () => {
  const card = `kind: plain\n${WASHED}`;
  const once = of(card, { receipts: receipt(9000, ", washed: 2026-11-20") });
  expect(once.fern.plan.forCutting).toBe(true);
  const halves = `${receipt(4000, ", washed: 2026-11-20")}\n${receipt(9000)}`;
  expect(of(card, { receipts: halves }).fern.plan.notForCutting).toHaveLength(1);
});

test("a flaw that was measured before washing is kept clear of where it will lie then", () => {
  const card = `kind: plain\n${WASHED}`;
  const flawed = of(card, {
    receipts: receipt(
      9000,
      ", flaws: [{ from: 1 m, length: 10 cm, from-left: 50 cm, width: 20 cm }]",
    ),
  });
  const [flaw] = flawed.fern.plan.flaws;
  expect(flaw?.y.toMm()).toBeCloseTo(960, 0);
  expect(flaw?.height.toMm()).toBeCloseTo(96, 0);
  expect(flaw?.x.toMm()).toBeCloseTo(490, 0);
  expect(flaw?.width.toMm()).toBeCloseTo(196, 0);
});

test("it may not be released before it was washed", () => {
  const { fern, diagnostics } = of(`kind: plain\n${WASHED}`, {
    receipts: receipt(
      9000,
      ", on: 2026-11-02, washed: 2026-11-20, released: { by: Ada Wren, on: 2026-11-10 }",
    ),
  });
  expect(fern.plan.released).toBeNull();
  const refused = diagnostics.find(({ code }) => code === "release-before-receipt");
  expect(refused?.message).toBe(
    "Fern was released on 2026-11-10, before it was washed on 2026-11-20.",
  );
});

test("what it loses has to be said, else nothing more is bought and that is told at the card", () => {
  const { fern, diagnostics } = of("kind: plain\nwash-first: yes");
  expect(diagnostics).toMatchObject([
    { code: "wash-first-without-shrinkage", severity: "warning", keyPath: "wash-first" },
  ]);
  expect(fern.buy.length.equals(of("kind: plain").fern.buy.length)).toBe(true);
});

test("what it loses across has to be said too, else its width is measured after washing before anything is cut", () => {
  const card = "kind: plain\nshrinkage: 4 %\nwash-first: yes";
  const unsaid = of(card);
  expect(unsaid.fern.usableWidth.toMm()).toBe(1370);
  expect(unsaid.diagnostics).toMatchObject([
    {
      code: "wash-first-without-shrinkage-across",
      severity: "warning",
      keyPath: "shrinkage",
      message: expect.stringContaining("it is planned 137\u202fcm wide, as it comes"),
    },
  ]);
  expect(JSON.stringify(unsaid.fern.origins)).toContain("4 % along, how much across nobody said");
  // That it loses nothing is an answer.
  expect(of(`${card}\nshrinkage-across: 0 %`).diagnostics).toEqual([]);
  const came = (more: string, said = card) => of(said, { receipts: receipt(9000, more) });
  const washed = came(", washed: 2026-11-20");
  expect(washed.fern.plan.notForCutting).toEqual([
    "Its width has not been measured since it was washed.",
  ]);
  expect(washed.diagnostics.map(({ code }) => code)).toContain(
    "wash-first-without-shrinkage-across",
  );
  const measured = came(", washed: 2026-11-20, width: 132 cm");
  expect(measured.fern.plan.forCutting).toBe(true);
  expect(measured.diagnostics.map(({ code }) => code)).toEqual(["arrived-narrower"]);
  expect(
    came(", washed: 2026-11-20", `${card}\n${REPEAT}`.replace("kind: plain\n", "")).fern.plan
      .notForCutting,
  ).toEqual(["Its repeat and width have not been measured since it was washed."]);
});

test("a loose cover of a cloth that shrinks asks whether it is washed first, until the card says yes or no", () => {
  const sofa =
    "  - sofa: Settle\n    cloth: fern\n    type: three-seater\n    cover: loose\n    size: 220 cm x 95 cm x 85 cm\n";
  const asked = (card: string, items = sofa) =>
    of(card, { items }).items.flatMap(({ made }) =>
      made.questions.filter((each) => each.includes("washed before it is cut")),
    );
  expect(asked("kind: plain\nshrinkage: 4 %")).toHaveLength(1);
  expect(asked("kind: plain\nshrinkage: 4 %\nwash-first: no")).toEqual([]);
  expect(asked(`kind: plain\n${WASHED}`)).toEqual([]);
  expect(asked("kind: plain")).toEqual([]);
  expect(asked("kind: plain\nshrinkage: 4 %", sofa.replace("loose", "fixed"))).toEqual([]);
});
