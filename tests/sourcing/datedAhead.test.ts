import { expect, test } from "vitest";
import { datedAhead } from "../../src/sourcing/datedAhead.ts";
import { small } from "../money/pricedStudio.ts";
import { PROJECT, recordsOf } from "../quantities/studioOf.ts";

/** The warnings of a project whose file says this of orders and receipts, as on 27 November 2026. */
function told(lines: string): string[] {
  const { projects, diagnostics } = recordsOf(small({ project: `${PROJECT}\n${lines}` }));
  expect(diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  const [project] = [...projects.values()];
  if (!project) throw new Error("No project");
  return datedAhead(project, "2026-11-27").map((d) => `${d.code} ${d.keyPath}: ${d.message}`);
}

// A slip in the year; days ahead are told by the calendar alone.
test("an order, a receipt and a return that are dated ahead are told; tomorrow's is not", () => {
  const order = (on: string) => `orders: [{ cloth: plain, length: 1 yd, on: ${on} }]`;
  expect(told(order("2026-11-27"))).toEqual([]);
  expect(told(order("2026-11-28"))).toEqual([]);
  expect(told(order("2027-11-02"))).toEqual([
    "order-ahead orders[0].on: This order is dated 2027-11-02, and today is 2026-11-27: it is taken as ordered all the same, and asked for no more.",
  ]);
  expect(told("receipts: [{ cloth: plain, lot: 1, length: 1 yd, on: 2026-12-20 }]")).toEqual([
    "receipt-ahead receipts[0].on: This receipt is dated 2026-12-20, and today is 2026-11-27: it is taken as here all the same.",
  ]);
  expect(told("receipts: [{ cloth: plain, lot: 1, length: 1 yd }]")).toEqual([]);
  const back = (on: string) =>
    `receipts: [{ cloth: plain, lot: 1, length: 1 yd, on: 2026-11-20, returned: { on: ${on} } }]`;
  expect(told(back("2026-11-28"))).toEqual([]);
  expect(told(back("2027-11-25"))).toEqual([
    "return-ahead receipts[0].returned.on: This return is dated 2027-11-25, and today is 2026-11-27: nothing is planned on it all the same.",
  ]);
  expect(told("approvals: [{ revision: A, by: Ono Vale, on: 2027-11-02 }]")).toEqual([
    "approval-ahead approvals[0].on: This approval is dated 2027-11-02, and today is 2026-11-27: it is taken as given all the same.",
  ]);
});
