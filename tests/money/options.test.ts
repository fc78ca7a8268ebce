import { expect, test } from "vitest";
import { comparedCloths, finishedCost, optionsOf } from "../../src/money/alternatives.ts";
import { isOpen } from "../../src/records/itemOptions.ts";
import type { ItemRecord } from "../../src/records/records.ts";
import { recordsOf, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { pricedOf, tradeOf } from "./priced.ts";

// Options are compared by the finished item. Sums by hand; the scenario is made up.

const STUDIO = `${STUDIO_INCHES}\nmarkup: { cloth: 2 }\ntax: { goods: 10, services: 0 }`;
const cloth = (name: string, trade: number, more = "") =>
  `cloth: ${name}\nwidth: 54"\nkind: plain\nprice: { trade: ${trade}, per: yard }\n${more}`;
const CLOTHS = {
  linen: cloth("Linen", 10),
  velvet: cloth("Velvet", 40, "sample: { fee: 3, credited: yes }"),
};
const ROOM = (options: string) => `room: Den
items:
  - cushion: One
    size: 20" x 20"
    edge: knife
    making: 30
    options:
${options}`;
const TWO = `      - { option: In linen, cloth: linen }
      - { option: In velvet, cloth: velvet }
`;
const small = (options: string, more = "") => ({
  studio: STUDIO,
  cloths: CLOTHS,
  rooms: { den: `${ROOM(options)}${more}` },
});
const itemOf = (priced: ReturnType<typeof pricedOf>): ItemRecord =>
  priced.project.rooms[0]?.items[0] as ItemRecord;

test("the first option stands until one has the answer yes; then the item is that one", () => {
  const open = pricedOf(small(TWO));
  expect(isOpen(itemOf(open))).toBe(true);
  expect(tradeOf(open.money, "cloth")).toEqual([750]);
  const velvet = pricedOf(small(TWO.replace("cloth: velvet", "cloth: velvet, answer: yes")));
  expect(isOpen(itemOf(velvet))).toBe(false);
  expect(tradeOf(velvet.money, "cloth")).toEqual([3000]);
  const refused = pricedOf(small(TWO.replace("cloth: linen", "cloth: linen, answer: no")));
  expect(isOpen(itemOf(refused))).toBe(true);
  expect(tradeOf(refused.money, "cloth")).toEqual([3000]);
});

test("each option by the finished item: its own cloth, making and tax, and what the project then costs more", () => {
  const priced = pricedOf(small(TWO));
  const options = optionsOf(priced.context, priced, "den", itemOf(priced));
  // 3/4 yd: linen 15.00, velvet 60.00, with 10 % tax; making 30.00.
  expect(
    options.map((o) => [o.title, o.stands, Number(o.cost.client.minor), Number(o.more.minor)]),
  ).toEqual([
    ["In linen", true, 4650, 0],
    ["In velvet", false, 9600, 4950],
  ]);
  expect(finishedCost(priced.money, "den", null).client.minor).toBe(4650n);
});

test("the order of the options changes no price, only which one stands", () => {
  const [first, second] = TWO.trimEnd().split("\n") as [string, string];
  const turned = pricedOf(small(`${second}\n${first}\n`));
  const options = optionsOf(turned.context, turned, "den", itemOf(turned));
  expect(options.map((o) => [o.title, Number(o.cost.client.minor), Number(o.more.minor)])).toEqual([
    ["In velvet", 9600, 0],
    ["In linen", 4650, -4950],
  ]);
});

test("a sample of an option that is not bought is lost, of one that is bought is credited", () => {
  expect(tradeOf(pricedOf(small(TWO)).money, "sample")).toEqual([300]);
  const taken = pricedOf(small(TWO.replace("cloth: velvet", "cloth: velvet, answer: yes")));
  expect(tradeOf(taken.money, "sample")).toEqual([]);
});

test("a cloth exchanged in the whole room", () => {
  const priced = pricedOf({
    ...small(TWO.split("\n")[0] as string),
    rooms: { den: `${ROOM(`${TWO.split("\n")[0]}\n`)}compare: [{ cloth: linen, with: velvet }]\n` },
  });
  const [only] = comparedCloths(priced.context, priced, "den");
  expect(only).toMatchObject({ title: "Velvet for Linen", item: null, stands: false });
  expect([only?.cost.client.minor, only?.more.minor]).toEqual([9600n, 4950n]);
});

const faults = (options: string) =>
  recordsOf(small(options))
    .diagnostics.filter((d) => d.severity === "error")
    .map((d) => [d.code, d.line, d.keyPath]);

test("faults of options stand at their own lines", () => {
  expect(faults(TWO)).toEqual([]);
  expect(faults(TWO.replaceAll(" }", ", answer: yes }"))).toEqual([
    ["options-two-yes", 10, "items[0].options[1].answer"],
  ]);
  expect(faults(TWO.replaceAll(" }", ", answer: no }"))).toEqual([
    ["options-all-no", 8, "items[0].options"],
  ]);
  expect(faults(TWO.replace("cloth: velvet", "cloth: velvett"))).toEqual([
    ["cloth-unknown", 10, "items[0].options[1].cloth"],
  ]);
  expect(faults(TWO.replace("cloth: velvet", "clotth: velvet"))).toEqual(
    expect.arrayContaining([["key-unknown", 10, "items[0].options[1].clotth"]]),
  );
  expect(faults(TWO.replace("cloth: velvet", "cloth: velvet, edge: round"))).toEqual([
    [expect.any(String), 10, "items[0].options[1].edge"],
  ]);
  expect(faults(TWO.replace("cloth: velvet", "cloth: velvet, answer: maybe"))).toEqual([
    ["word-unknown", 10, "items[0].options[1].answer"],
  ]);
  expect(faults(TWO.replace("cloth: velvet", "cloth: velvet, cushion: Two"))).toEqual([
    ["option-fixed-key", 10, "items[0].options[1].cushion"],
  ]);
  expect(faults("      - { option: In nothing }\n")).toEqual([
    ["key-missing", 4, "items[0].cloth"],
  ]);
});

test("a fault of the item itself is said once, however many options it has", () => {
  const room = ROOM(TWO).replace('size: 20" x 20"', "size: 20 x 20");
  const found = recordsOf({ ...small(TWO), rooms: { den: room } }).diagnostics.filter(
    (d) => d.severity === "error",
  );
  expect(found.map((d) => [d.line, d.keyPath])).toEqual([[5, "items[0].size"]]);
});
