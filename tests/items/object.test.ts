import { expect, test } from "vitest";
import type { ObjectFacts } from "../../src/items/itemKind.ts";
import { objectSeen, objectZone } from "../../src/items/object/area.ts";
import { makeObject } from "../../src/items/object/pieces.ts";
import { objectItemSchema } from "../../src/items/object/schema.ts";
import { contextFor, fieldsOf, length, tradeCase } from "./tradeContext.ts";

function facts(more: Partial<ObjectFacts>): ObjectFacts {
  return {
    id: "piece",
    name: "Piece",
    shape: "picture",
    width: length('30"'),
    depth: null,
    height: length('24"'),
    weight: null,
    stays: true,
    owner: "client",
    round: false,
    mattress: null,
    hasPhoto: false,
    colours: ["#884433"],
    ...more,
  };
}
function make(card: ObjectFacts | null, raw: Record<string, unknown> = {}) {
  const fields = fieldsOf(objectItemSchema, { object: "piece", ...raw });
  return { fields, made: makeObject(fields, contextFor({}, { objects: card ? [card] : [] })) };
}

test("a picture that hangs prints its weight as typed, and no rating (sa-13 and ra-07, county arts guidance; weight rule common practice, no source)", () => {
  const c = tradeCase("safety", "sa-13");
  const weight = `${(c.inputs.piece_weight as unknown as { value: number }).value} kg`;
  const { made } = make(facts({ weight }), {
    at: { wall: "north", "from-left": '10"', height: '50"' },
  });
  expect(made.cautions).toEqual(["heavy-hanging"]);
  expect(made.working).toEqual([
    { what: "Weight", sum: "as given", result: weight, rounded: null },
  ]);
  expect(made.questions).toEqual([]);
});

test("an unknown weight is asked for; a picture that stands on a chest hangs on nothing", () => {
  expect(make(facts({}), { at: { wall: "north", height: '50"' } }).made.questions[0]).toContain(
    "weight",
  );
  expect(make(facts({}), { at: { on: "chest" } }).made.cautions).toEqual([]);
  expect(
    make(facts({ shape: "stove" }), { at: { wall: "north", "from-left": '10"' } }).made.cautions,
  ).toEqual([]);
});

test("zones: rugs on the floor, what hangs on the wall, lamps at table height", () => {
  const zone = (card: ObjectFacts, raw = {}) => {
    const { fields, made } = make(card, raw);
    return objectZone(fields, made);
  };
  expect(zone(facts({ shape: "rug" }))).toBe("floor");
  expect(zone(facts({}), { at: { wall: "north", height: '50"' } })).toBe("wall");
  expect(zone(facts({ shape: "lamp" }), { at: { on: "table" } })).toBe("table");
  expect(zone(facts({ shape: "seat" }))).toBe("seat");
});

test("a rug is seen from above, a picture from the front; without a size nothing is seen and it is said", () => {
  const rug = make(facts({ shape: "rug", depth: length('60"'), height: null }));
  expect(objectSeen(rug.fields, rug.made)[0]?.areaMm2).toBeCloseTo(762 * 1524, 6);
  const bare = make(facts({ width: null, height: null }));
  expect(objectSeen(bare.fields, bare.made)).toEqual([]);
  expect(bare.made.diagnostics[0]).toMatchObject({
    code: "object-without-size",
    severity: "warning",
  });
  expect(make(null).made.diagnostics).toEqual([]);
});
