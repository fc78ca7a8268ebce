import { expect, test } from "vitest";
import { type Finding, pasteLineFor } from "../../src/scheme/finding.ts";
import { CREAM, GREEN, stripe, with_ } from "./goodRoom.ts";
import { type MadeRoom, schemeOf } from "./roomOf.ts";

/** A room in which much is to be looked at: colours from outside, one seen once, near sizes that touch, cloths that are not fit. */
const TROUBLED: MadeRoom = with_(
  {
    ticking: {
      ...stripe,
      motifMm: 150,
      colours: { [CREAM]: 0.5, [GREEN]: 0.3, "#4060c0": 0.2 },
      card: "suits: [curtains]\nrubs: 8000 martindale\nlight: 2",
    },
  },
  {
    room: `approach: from-anchor\nanchor: stove\ncolours:\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "#d8b872", name: Straw }`,
    objects: { stove: { kind: "plain", colours: { [GREEN]: 0.8, "#9b4529": 0.2 } } },
    contacts: [{ one: "item-1", other: "item-2", stated: true }],
    items: [{ item: "item-2", operation: "chain" }],
  },
);

const open = (room: MadeRoom): Finding[] =>
  schemeOf(room).findings.filter((f) => f.level !== "works" && f.accepted === null);

test("every finding's line can be pasted as it is printed, with a reason, and overrules that finding alone", () => {
  const all = open(TROUBLED);
  expect(new Set(all.map((f) => f.code)).size).toBeGreaterThan(7);
  for (const f of all) {
    const line = (f.pasteLine as string).replace("…", "It is meant.");
    const waived = schemeOf({ ...TROUBLED, room: `${TROUBLED.room}\naccept:\n${line}` });
    expect(waived.diagnostics).toEqual([]);
    const accepted = waived.findings.filter((o) => o.accepted !== null);
    expect(accepted.map((o) => [o.code, o.of])).toEqual([[f.code, f.of]]);
  }
});

test("all lines together leave nothing open", () => {
  const lines = open(TROUBLED).map((f) => (f.pasteLine as string).replace("…", "It is meant."));
  expect(open({ ...TROUBLED, room: `${TROUBLED.room}\naccept:\n${lines.join("\n")}` })).toEqual([]);
});

test("a name that YAML would take apart stands in quotes", () => {
  expect(pasteLineFor("colour-once", ["#9b4529"])).toContain('of: ["#9b4529"]');
  expect(pasteLineFor("not-suited", ["cushion-a", "x: y"])).toContain('of: [cushion-a, "x: y"]');
});
