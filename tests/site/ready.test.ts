import { describe, expect, test } from "vitest";
import type { Computed } from "../../src/site/computed.ts";
import { computedFolder } from "./smallFolder.ts";

// Goods that the studio buys ready and that no price is written for, from files. The scenario is made up; no published source.

interface Items {
  readonly cushion?: string;
  readonly blind?: string;
  readonly room?: string;
}

const files = ({ cushion = "", blind = "", room = "" }: Items) => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: EUR
paper: a3
makers: { bench: { name: Bench, makes: [cushion, blind, curtains], rates: { cushion: 30 per item, blind: 90 per item, curtains: 40 per width } } }`,
  "cloths/linen.md": `cloth: Linen\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nprice: { trade: 20, per: metre, on: 2026-11-01 }`,
  "projects/quay/project.md":
    "project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20",
  "projects/quay/den.md": `room: Den
${room}
items:
  - cushion: Seat
    cloth: linen
    size: 45 cm x 45 cm
    edge: knife
    filling: feather
    maker: bench
    count: 3
    ${cushion}
  - blind: Lane
    cloth: linen
    width: 90 cm
    drop: 120 cm
    operation: cordless
    maker: bench
    ${blind}
`,
});

const asked = (computed: Computed) => {
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  return computed.findings.filter((f) => f.code === "ready-unpriced");
};
const told = async (items: Items) => asked(await computedFolder(files(items)));

test("once for a room, with how many there are and the line to write", async () => {
  const [found, ...more] = await told({});
  expect(more).toEqual([]);
  expect(found?.level).toBe("worth-a-look");
  expect(found?.message).toContain("3 feather inserts");
  expect(found?.message).toContain("(Seat) and 1 headrail");
  expect(found?.message).toContain("(Lane)");
  expect(found?.reason).toContain(
    "Write at Seat, and likewise at the others: hardware: [{ what: feather insert, trade: …, count: 3 }].",
  );
  expect(found?.evidence).toEqual({ goods: 4 });
  expect(found?.pasteLine).toContain("of: [cushion-seat, blind-lane]");
});

describe("nothing is asked of what the item's hardware names", () => {
  test.each([["feather inserts"], ["cushion pad, duck feather"], ["Pads"], ["45 cm inner"]])(
    "a cushion: %s",
    async (what) => {
      const [found] = await told({
        cushion: `hardware: [{ what: "${what}", trade: 9, count: 3 }]`,
      });
      expect(found?.message).not.toContain("Seat");
      expect(found?.message).toContain("1 headrail");
      // One is left, so there are no others.
      expect(found?.reason).toContain("Write at Lane: hardware: [{ what: headrail, trade: … }].");
    },
  );

  test.each([["head rail, cordless"], ["headrail"], ["Blind kit"], ["aluminium track"]])(
    "a blind: %s",
    async (what) => {
      const [found] = await told({ blind: `hardware: [{ what: "${what}", trade: 30 }]` });
      expect(found?.message).not.toContain("headrail");
    },
  );

  test("a price of nothing says that the making holds it, and an agreed making alone does not", async () => {
    const all = {
      cushion: "making: 150\n    hardware: [{ what: feather insert, trade: 0, count: 3 }]",
      blind: "hardware: [{ what: headrail, trade: 0 }]",
    };
    expect(await told(all)).toEqual([]);
    expect(await told({ ...all, cushion: "making: 150" })).toHaveLength(1);
  });

  test("other hardware of the item names none of it", async () => {
    const [found] = await told({ blind: "hardware: [{ what: brass cleat, trade: 4 }]" });
    expect(found?.message).toContain("1 headrail");
  });
});

test("nothing is bought for what is there already or comes ready made", async () => {
  expect(await told({ blind: "existing: yes", cushion: "second-hand: yes" })).toEqual([]);
});

test("it is overruled like any other", async () => {
  const [found] = await told({
    room: "accept: [{ finding: ready-unpriced, because: The client has them. }]",
  });
  expect(found?.accepted).toBe("The client has them.");
});

test("a room that publishes it tells the client nothing", async () => {
  const computed = await computedFolder(files({ room: "publish: [ready-unpriced]" }));
  expect(asked(computed)).toHaveLength(1);
  const paths = computed.pages
    .filter((page) => /charged to nobody/.test(textOf(page.model)))
    .map((page) => page.path);
  expect(paths.length).toBeGreaterThan(0);
  expect(paths.filter((path) => !path.startsWith("studio/"))).toEqual([]);
});

function textOf(model: unknown): string {
  return JSON.stringify(model, (_, value) => (typeof value === "bigint" ? `${value}` : value));
}

test("the order list says size and price in one row, and both rows where the counts differ", async () => {
  const rows = async (count: number) => {
    const hardware = `hardware: [{ what: feather insert, trade: 9, count: ${count} }]`;
    const computed = await computedFolder(files({ cushion: hardware }));
    const page = computed.pages.find((p) => p.path.endsWith("quay/orders.html"));
    const model = JSON.parse(textOf(page?.model)) as Record<
      "pieces" | "materials",
      { what: { html: string } }[]
    >;
    return [model.pieces, model.materials].map((all) => all.map((row) => row.what.html).join());
  };
  const [pieces, others] = await rows(3);
  expect(pieces).toMatch(/^feather insert .*49/);
  expect(others).not.toContain("feather");
  expect((await rows(2))[1]).toContain("Feather insert");
});
