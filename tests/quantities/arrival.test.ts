import { expect, test } from "vitest";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { CLOTHS, CUSHION, cloths, MEASURED, room } from "./smallRooms.ts";
import { PROJECT, quantitiesOf, STUDIO_CM } from "./studioOf.ts";

test("not for cutting until the measures are checked and the cloth has arrived", () => {
  const received = `${PROJECT}\nreceipts: [{ cloth: fern, lot: 0123, length: 5 m, width: 137 cm }]`;
  const plan = (more: string, project = PROJECT) =>
    cloths({ project, cloths: CLOTHS, rooms: { a: room(CUSHION("One"), more) } })[0];
  expect(plan("")?.plan).toMatchObject({ forCutting: false });
  expect(plan("")?.plan.notForCutting).toHaveLength(2);
  expect(plan(MEASURED)?.plan.notForCutting).toEqual([
    "The cloth has not been received and checked.",
  ]);
  expect(plan("", received)?.plan.forCutting).toBe(false);
  expect(plan("measured: { by: studio, on: 2026-10-02 }\n", received)?.plan.forCutting).toBe(false);
  const ready = plan(MEASURED, received);
  expect(ready?.plan).toMatchObject({ forCutting: true, notForCutting: [] });
  expect(ready?.lot).toBe("0123");
});

test("what arrived is planned on as it is: narrower, with its flaws, with a repeat kept for the pattern's start", () => {
  const project = `${PROJECT}\nreceipts: [{ cloth: plain, lot: A, length: 2 m, width: 120 cm, flaws: [{ from: 30 cm, length: 5 cm }] }]`;
  const q = quantitiesOf({
    project,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One", 2, "plain"), MEASURED) },
  });
  expect(q.diagnostics.map((d) => d.code)).toContain("arrived-narrower");
  const cloth = q.cloths[0];
  expect(cloth?.usableWidth.toMm()).toBe(1200);
  for (const piece of cloth?.plan.pieces ?? []) {
    const clear = piece.y.toMm() + piece.height.toMm() <= 300 || piece.y.toMm() >= 350;
    expect(clear, `${piece.y.toMm()}`).toBe(true);
  }
});

test("too little of any one lot is said, and the plan stays as ordered", () => {
  const project = `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 1 m }, { cloth: fern, lot: B, length: 1 m }]`;
  const q = quantitiesOf({
    project,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One", 4), MEASURED) },
  });
  const found = q.diagnostics.find((d) => d.code === "received-not-enough");
  expect(found).toMatchObject({ severity: "warning", file: "projects/test/project.md" });
  expect(found?.message).toContain("lot A");
  expect(q.cloths[0]).toMatchObject({ lot: null });
  expect(q.cloths[0]?.plan.forCutting).toBe(false);
});

test("an estimate is a length on top, marked, and never for cutting", () => {
  const chair = `  - armchair: Carver\n    cloth: fern\n    type: club\n    size: 80 cm x 85 cm x 90 cm\n`;
  const q = quantitiesOf({ cloths: CLOTHS, rooms: { a: room(CUSHION("One") + chair, MEASURED) } });
  const fern = q.cloths[0];
  expect(fern?.estimates.map((e) => e.item)).toEqual(["armchair-carver"]);
  expect(fern?.plan.pieces.every((p) => p.item === "cushion-one")).toBe(true);
  const need =
    (fern?.plan.length.toMm() ?? 0) +
    (fern?.spare.toMm() ?? 0) +
    (fern?.estimates[0]?.length.toMm() ?? 0);
  expect(fern?.buy.length.toMm()).toBeGreaterThanOrEqual(need);
  expect(fern?.buy.length.toMm()).toBeLessThan(need + 100);
  expect(fern?.plan.notForCutting.join(" ")).toContain("estimated");
  expect(quantitiesText(q, "centimetres", "en-US")).toContain("ESTIMATE Carver, armchair");
});

test("a receipt of a cloth that two makers cut must say whose it is", () => {
  const studio = `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion] }, berta: { name: Berta, makes: [cushion] } }`;
  const rooms = { a: room(`${CUSHION("One")}${CUSHION("Two")}    maker: berta\n`, MEASURED) };
  const unsaid = quantitiesOf({
    studio,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 5 m }]`,
    cloths: CLOTHS,
    rooms,
  });
  expect(unsaid.diagnostics.map((d) => d.code)).toEqual(["no-plan", "receipt-without-maker"]);
  expect(unsaid.cloths.map((c) => c.plan.forCutting)).toEqual([false, false]);
  // What went back is with neither of them.
  const back = quantitiesOf({
    studio,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 5 m, returned: { on: 2026-12-05 } }]`,
    cloths: CLOTHS,
    rooms,
  });
  expect(back.diagnostics.map((d) => d.code)).toEqual(["no-plan"]);
  const said = quantitiesOf({
    studio,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 5 m, maker: berta }]`,
    cloths: CLOTHS,
    rooms,
  });
  expect(said.cloths.map((c) => [c.maker, c.lot, c.plan.forCutting])).toEqual([
    ["anna", null, false],
    ["berta", "A", true],
  ]);
  expect(said.diagnostics.map((d) => d.code)).toEqual(["no-plan"]);
});
