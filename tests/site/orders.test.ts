import { expect, test } from "vitest";
import { computedFolder, saidOf } from "./smallFolder.ts";

// What the order list says, from files. Sums by hand; the scenario is made up.

interface Orders {
  groups: {
    name: string;
    rows: { name: string; buy: { html: string }; maker: string; sum: string }[];
  }[];
  pieces: {
    what: { html: string };
    count: string;
    supplier: string;
    sum: string;
    item: string;
    wait: string;
  }[];
}

const files = (project: string) => ({
  "studio.md": `studio: Alder Lane Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
markup: { cloth: 2, hardware: 1.5, objects: 1.5 }
makers:
  bench: { name: Bench, makes: [curtains], rates: { curtains: 50 per width } }
  frame: { name: Frame, makes: [cushion], rates: { cushion: 30 per item } }
suppliers: { mill: { name: The mill }, forge: { name: The forge } }`,
  "cloths/linen.md": `cloth: Linen\nwidth: 54"\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\nsupplier: mill\nprice: { trade: 40, per: yard, bolt: { length: 20 yd, trade: 30 } }`,
  "objects/lamp.md": `object: Brass lamp\nshape: lamp\nsize: 12" x 12" x 24"\nsupplier: forge\nprice: { trade: 90 }`,
  "projects/quay/project.md": `project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20\n${project}`,
  "projects/quay/den.md": `room: Den
cloths: [linen]
items:
  - curtains: Bay
    cloth: linen
    pole: 96"
    drop: 90"
    heading: pencil-pleat
    maker: bench
    hardware: [{ what: iron pole, supplier: forge, trade: 60, count: 2 }]
  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: knife
    maker: frame
  - object: lamp
    count: 3`,
});

async function orders(project = "") {
  const computed = await computedFolder(files(project));
  expect(saidOf(computed)).toEqual([]);
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
  const totals = computed.money("quay")?.json as {
    lines: { cloth: string; what: string; trade: number }[];
  };
  return { model: page?.model as unknown as Orders, lines: totals.lines };
}

test("hardware and objects that are bought ready stand beside the cloths, with their suppliers and sums", async () => {
  const { model } = await orders();
  expect(model.pieces.map((p) => [p.what.html, p.count, p.supplier, p.sum, p.item])).toEqual([
    ["iron pole", "2", "The forge", "$120.00", "Bay"],
    ["Brass lamp", "3", "The forge", "$270.00", "lamp"],
  ]);
});

test("a cloth bought by the bolt is ordered in bolts, once for all its makers, at the price that the sums say", async () => {
  const cut = await orders();
  const rows = (o: Orders) => o.groups.find((g) => g.name === "The mill")?.rows ?? [];
  expect(
    rows(cut.model)
      .map((r) => r.sum)
      .every((s) => s.startsWith("$")),
  ).toBe(true);
  const bolt = await orders("by-the-bolt: [linen]");
  const [first, second] = rows(bolt.model);
  expect(first?.buy.html).toContain("1 whole bolt;");
  // 20 yd at 30.
  expect(first?.sum).toBe("$600.00");
  expect(second?.buy.html).toContain("from the same bolt:");
  expect(second?.sum).toBe("");
  const trade = bolt.lines.filter((l) => l.cloth === "linen" && l.what === "cloth");
  expect(trade.reduce((a, l) => a + l.trade, 0)).toBe(60_000);
});
