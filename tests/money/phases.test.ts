import { expect, test } from "vitest";
import { PROJECT, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { clientOf, pricedOf } from "./priced.ts";

// Phases by commitment: what is cheap and easily changed first (common practice, no source).

const PLAIN = `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 10, per: yard }`;
const ROOM = (cushion = "", chair = "") => `room: Den
items:
  - cushion: Pad
    cloth: plain
    size: 20" x 20"
    edge: knife
    making: 10
${cushion}  - armchair: Carver
    cloth: plain
    size: 31" x 34" x 36"
    making: 20
    pieces: [{ piece: seat, size: 24" x 26" }]
${chair}`;
const priced = (cushion = "", chair = "", studio = "") =>
  pricedOf({
    studio: `${STUDIO_INCHES}\n${studio}`,
    project: `${PROJECT}\nfees: { design: 100 }`,
    cloths: { plain: PLAIN },
    rooms: { den: ROOM(cushion, chair) },
  }).money;

test("each kind has its usual phase, which the studio or the item may change; how hard it is to undo stays with the kind", () => {
  const phases = (money: ReturnType<typeof priced>) =>
    money.phases.map((p) => [p.phase, p.commitment]);
  expect(phases(priced())).toEqual([
    [1, 1],
    [3, 3],
    [null, null],
  ]);
  expect(phases(priced("", "", "phases: { armchair: 1 }"))).toEqual([
    [1, 3],
    [null, null],
  ]);
  expect(phases(priced("    phase: 4\n", "", "phases: { armchair: 2 }"))).toEqual([
    [2, 3],
    [4, 1],
    [null, null],
  ]);
});

test("the phases and what belongs to the whole project make the total", () => {
  const money = priced();
  const sum = money.phases.reduce((a, p) => a + p.total.minor, 0n);
  expect(sum).toBe(money.totals.total.minor);
});

test("an item that comes after one of a later phase: an error at its line; in the same or a later phase, none", () => {
  const found = (cushion: string, chair = "") =>
    priced(cushion, chair).diagnostics.map((d) => [d.code, d.severity, d.line, d.keyPath]);
  expect(found("    after: [armchair-carver]\n")).toEqual([
    ["phase-before-its-need", "error", 9, "items[0].after[0]"],
  ]);
  expect(found("    after: [Carver]\n    phase: 3\n")).toEqual([]);
  expect(found("", "    after: [cushion-pad]\n")).toEqual([]);
});

test("second-hand: what comes ready made costs its alteration, and no cloth; the client's own cloth is made up, and not bought", () => {
  const money = priced("    second-hand: yes\n");
  const own = money.lines.filter((l) => l.item === "cushion-pad");
  expect(own.map((l) => l.what)).toEqual(["making"]);
  expect(clientOf(priced("    owner: client\n"), "making")).toEqual([1000, 2000]);
  expect(
    priced("    owner: client\n")
      .lines.filter((l) => l.item === "cushion-pad")
      .map((l) => l.what),
  ).toEqual(["making"]);
});
