// One lot may come in several lengths, each measured with a repeat of its own: a plan in register on the one is out of it on the other,
// and takes less there than the cloth does. Figures by hand: a cushion of 50 cm is cut 53 cm; with a motif in its middle every further
// row stands a whole repeat on, so four rows take 3 repeats and 53 cm: 245 cm at 64 cm, 254 cm at 67 cm.
import { expect, test } from "vitest";
import { PROJECT, quantitiesOf, STUDIO_CM } from "./studioOf.ts";

const FERN =
  "cloth: Fern\nwidth: 60 cm\nkind: large-print\nruns: one-way\nrepeat: { up: 64 cm, across: 60 cm, match: straight, from-selvedge: 30 cm }";
const PLAIN = "cloth: Oat\nwidth: 137 cm\nkind: plain";

const cushion = (title: string, count: number) =>
  `  - { cushion: ${title}, cloth: fern, back: plain, count: ${count}, size: 50 cm x 50 cm, edge: knife, closure: sewn }`;

/** First motif 26.5 cm up: the first row is cut from the very end. */
function planned(receipts: readonly string[], count = 4) {
  const found = quantitiesOf({
    studio: `${STUDIO_CM}\nallowances: { cushion: { seam: 1.5 cm } }`,
    project: `${PROJECT}\nreceipts:\n${receipts.map((r) => `  - { cloth: fern, lot: A, first-motif: 26.5 cm, ${r} }`).join("\n")}`,
    cloths: { fern: FERN, plain: PLAIN },
    rooms: {
      a: `room: A\nmeasured: { by: studio, on: 2026-10-02, checked: 2026-10-03 }\nitems:\n${cushion("One", count)}`,
    },
  });
  const fern = found.cloths.find((each) => each.cloth === "fern");
  const codes = found.diagnostics.map(({ code }) => code);
  return { fern, codes, diagnostics: found.diagnostics };
}

test("a length of another repeat is not planned on with the first one's repeat", () => {
  // 60 cm holds one cushion, 200 cm three at 64 cm (181 cm) and three at 67 cm (187 cm): four would need both, which repeat apart.
  const both = planned(["length: 60 cm, repeat: 64 cm", "length: 200 cm, repeat: 67 cm"]);
  expect(both.fern?.plan.forCutting).toBe(false);
  expect(both.codes).toContain("received-not-enough");
  expect(both.diagnostics.find(({ code }) => code === "lot-repeats-differ")).toMatchObject({
    severity: "warning",
    keyPath: "receipts[1].repeat",
    actual: "67 cm",
    expected: "64 cm",
  });
});

test("with the first one's repeat too short a length would seem to hold what it does not", () => {
  // Four take 245 cm at 64 cm, and 254 cm at the 67 cm that this length has.
  const short = planned(["length: 10 cm, repeat: 64 cm", "length: 250 cm, repeat: 67 cm"]);
  expect(short.fern?.plan.forCutting).toBe(false);
  expect(short.codes).toContain("received-not-enough");
  const enough = planned(["length: 10 cm, repeat: 64 cm", "length: 254 cm, repeat: 67 cm"]);
  expect(enough.fern?.plan.forCutting).toBe(true);
  expect(enough.fern?.plan.pieces.map(({ y }) => y.toMm()).sort((a, b) => a - b)).toEqual([
    0, 670, 1340, 2010,
  ]);
});

test("lengths of one repeat, or measured but once, are planned on together", () => {
  for (const second of [", repeat: 64 cm", ""]) {
    const found = planned(["length: 60 cm, repeat: 64 cm", `length: 200 cm${second}`]);
    expect(found.codes).not.toContain("lot-repeats-differ");
    expect(found.fern?.plan.forCutting).toBe(true);
  }
});
