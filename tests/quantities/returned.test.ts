import { expect, test } from "vitest";
import { CLOTHS, CUSHION, MEASURED, room } from "./smallRooms.ts";
import { PROJECT, quantitiesOf } from "./studioOf.ts";

// What came and was sent back to its supplier: common practice, no source. Sums by hand.

const NEED = 2;

function held(project: string) {
  const q = quantitiesOf({
    project: `${PROJECT}\n${project}`,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One", NEED, "plain"), MEASURED) },
  });
  const [cloth] = q.cloths;
  if (!cloth) throw new Error("no cloth");
  const diagnostics = q.diagnostics.filter((d) => d.code !== "no-plan");
  return { cloth, codes: diagnostics.map((d) => d.code), diagnostics };
}
const receipt = (more: string, lot = "A") =>
  `{ cloth: plain, lot: ${lot}, length: 5 m, width: 140 cm, on: 2026-12-03${more} }`;
const BACK = ", returned: { on: 2026-12-05, because: another shade }";

test("nothing is planned on what went back; what came in its place is planned on, in its own lot", () => {
  const back = held(`receipts: [${receipt(BACK)}]`);
  expect(back.cloth.lots).toEqual([]);
  expect(back.cloth.plan.notForCutting).toEqual(["The cloth has not been received and checked."]);
  expect(back.codes).toEqual([]);
  const anew = held(`receipts: [${receipt(BACK)}, ${receipt("", "B")}]`);
  expect(anew.cloth.lots.map(({ lot }) => lot)).toEqual(["B"]);
  expect(anew.cloth.plan.forCutting).toBe(true);
  // Both would be twice what was ordered, had the first been kept.
  const ordered = "orders: [{ cloth: plain, length: 5 m, on: 2026-11-20 }]\n";
  expect(held(`${ordered}receipts: [${receipt(BACK)}, ${receipt("", "B")}]`).codes).toEqual([]);
  expect(held(`${ordered}receipts: [${receipt("")}, ${receipt("", "B")}]`).codes).toContain(
    "received-more-than-ordered",
  );
});

test("what went back to be credited no longer counts as ordered; what is to be replaced does", () => {
  // Four squares of 53 cm, two across 140 cm: 106 cm and what is kept back.
  const short = (orders: string, receipts: string) =>
    held(`orders: [${orders}]\nreceipts: [${receipts}]`).codes.includes("ordered-too-little");
  const one = "{ cloth: plain, length: 1.2 m, on: 2026-11-20 }";
  const other = "{ cloth: plain, length: 20 cm, on: 2026-12-06 }";
  const came = (back: string) => receipt(back).replace("5 m", "1.2 m");
  const credit = ", returned: { on: 2026-12-05, for: credit }";
  expect(short(one, came(""))).toBe(false);
  expect(short(one, came(BACK))).toBe(false);
  // All of it credited is a card of which nothing is ordered: the order list says so, no line of an order is at fault.
  expect(short(one, came(credit))).toBe(false);
  expect(short(`${one}, ${other}`, came(credit))).toBe(true);
  // By the tape it was 4 cm short: the order was credited whole all the same.
  expect(short(one, came(credit).replace("1.2 m", "1.16 m"))).toBe(false);
  // Of two lengths the one that is kept counts, by what was ordered less what went back.
  expect(short(`${one}, ${one}`, `${came(credit)}, ${came("").replace("1.2 m", "1.1 m")}`)).toBe(
    false,
  );
});

test("a length that went back and is released, or went back before it came, is told at its line", () => {
  const both = held(
    `receipts: [${receipt(`${BACK}, released: { by: Ada Wren, on: 2026-12-06, plan: 4KQ7-2B }`)}]`,
  );
  expect(both.diagnostics).toMatchObject([
    { code: "returned-and-released", severity: "warning", keyPath: "receipts[0].released" },
  ]);
  expect(both.cloth.plan.released).toBeNull();
  const early = held(`receipts: [${receipt(", returned: { on: 2026-12-01 }")}]`);
  expect(early.diagnostics).toMatchObject([
    { code: "days-out-of-order", keyPath: "receipts[0].returned.on" },
  ]);
});
