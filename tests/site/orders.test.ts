import { expect, test } from "vitest";
import { files } from "./orderFiles.ts";
import { computedFolder, saidOf } from "./smallFolder.ts";

// What the order list says, from files. Sums by hand; the scenario is made up.

interface Orders {
  groups: {
    name: string;
    rows: {
      name: string;
      buy: { html: string };
      maker: string;
      sum: string;
      price: string;
      inAll: { html: string };
      ordered: string;
    }[];
  }[];
  pieces: {
    what: { html: string };
    count: string;
    supplier: string;
    state: string;
    sum: string;
    item: string;
    wait: string;
  }[];
}

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
    ["iron pole, 96″", "2", "The forge", "$120.00", "Bay"],
    ["Brass lamp", "3", "The forge", "$270.00", "lamp"],
  ]);
});

test("what was ordered of them and what is here stands beside their names, and changes no price", async () => {
  const said = async (pole: string, lamp: string) => {
    const den = files("")["projects/quay/den.md"];
    const computed = await computedFolder({
      ...files(""),
      "projects/quay/den.md": den
        .replace("trade: 60,", `trade: 60, ${pole}`)
        .replace("count: 3", `count: 3${lamp}`),
    });
    expect(saidOf(computed)).toEqual([]);
    const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
    const model = page?.model as unknown as Orders | undefined;
    return model?.pieces.map((p) => `${p.what.html}, ${p.sum}: ${p.state.replace(/\s/g, " ")}`);
  };
  expect(await said("", "")).toEqual(["iron pole, 96″, $120.00: ", "Brass lamp, $270.00: "]);
  expect(
    await said("ordered: 2026-11-19,", "\n    ordered: 2026-11-16\n    arrived: 2026-11-18"),
  ).toEqual([
    "iron pole, 96″, $120.00: Ordered on November 19, 2026",
    "Brass lamp, $270.00: Here since November 18, 2026",
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

test("what was ordered of a cloth for all its makers stands once, below the last of them", async () => {
  const { model } = await orders("orders: [{ cloth: linen, length: 40 yd, on: 2026-12-03 }]");
  const linen = model.groups
    .flatMap((g) => g.rows)
    .filter((r) => r.name === "Linen")
    .map((r) => r.ordered.slice(0, 14).replace(/\s/g, " "));
  expect(linen).toEqual(["", "Ordered: 40 yd"]);
});

/** The linen's rows, and the receiving slip's blocks of it, where its card is sold so. */
async function linenSold(price: string) {
  const card = files("")["cloths/linen.md"];
  const computed = await computedFolder({
    ...files(""),
    "cloths/linen.md": card.replace("per: yard", `per: yard, ${price}`),
  });
  expect(saidOf(computed)).toEqual([]);
  const modelOf = (kind: string) =>
    computed.pages.find((p) => (p.model as { kind: string }).kind === kind)?.model;
  const orders = modelOf("orders") as unknown as Orders;
  const slip = modelOf("receiving") as unknown as {
    blocks: { name: string; amount: { html: string }; maker: string; divided: { html: string } }[];
  };
  const money = computed.money("quay")?.json as { lines: { cloth: string; trade: number }[] };
  const sheets = JSON.stringify(
    computed.pages.filter((p) => p.path.startsWith("makers/")).map((p) => p.model),
  );
  return {
    rows: orders.groups.find((g) => g.name === "The mill")?.rows ?? [],
    blocks: slip.blocks,
    trade: money.lines.filter((l) => l.cloth === "linen").reduce((a, l) => a + l.trade, 0),
    sheets,
  };
}

// The cushion takes two faces of 21 in beside each other, 7/12 yd: 0.59 yd, up.
test("a cloth sold in whole bolts is one order for both makers: list, receiving slip and sums agree", async () => {
  const { rows, blocks, trade, sheets } = await linenSold("sold-by: bolt");
  expect(rows.map((r) => [r.maker, r.sum])).toEqual([
    ["Bench", "$600.00"],
    ["Frame", ""],
  ]);
  // The bolt's price, by which 20 yd come to the sum.
  expect(rows.map((r) => r.price)).toEqual(["$30.00 a yard", "$30.00 a yard"]);
  expect(rows[0]?.buy.html).toMatch(/^1 whole bolt;/);
  expect(rows[1]?.buy.html).toMatch(/^from the same bolt:/);
  expect(rows[0]?.inAll.html).toBe("");
  const divided = /one whole bolt of .*20.*yd.*: .* to Bench, .*0\.59.*yd.* to Frame; .* over/;
  expect(rows[1]?.inAll.html).toMatch(divided);
  expect(blocks.map((b) => b.maker)).toEqual(["Bench", "Frame"]);
  expect(blocks[0]?.divided.html).toMatch(divided);
  expect(blocks[1]?.divided.html).toBe("Its part of the same order");
  expect(blocks[1]?.amount.html).toContain("0.59");
  expect(trade).toBe(60_000);
  // Each maker's sheet says what comes to it, and nothing of the other.
  expect(sheets).not.toContain("whole bolt");
});

test("where each maker's is bought by itself the list adds them up", async () => {
  const { rows, blocks, trade } = await linenSold("sold-by: 1/4 yd");
  const sums = rows.map((r) => Number(r.sum.slice(1)));
  expect(sums[1]).toBe(30);
  expect(rows[0]?.inAll.html).toBe("");
  const all = ((sums[0] ?? 0) + 30).toFixed(2);
  expect(rows[1]?.inAll.html).toMatch(/^In all .*yd/);
  expect(rows[1]?.inAll.html.endsWith(`, $${all}.`)).toBe(true);
  expect(trade).toBe(100 * ((sums[0] ?? 0) + 30));
  expect(blocks.map((b) => b.divided.html)).toEqual(["", ""]);
});

test("a minimum of both makers together is one order: 16 yd, paid for once", async () => {
  const { rows, trade } = await linenSold("minimum: 16 yd");
  expect(rows.map((r) => r.sum)).toEqual(["$640.00", ""]);
  expect(rows[0]?.buy.html).toMatch(/^16.*yd.*; .* of it$/);
  expect(rows[1]?.buy.html).toMatch(/^from the same length: .*3\/4.* of it$/);
  expect(rows[1]?.inAll.html).toMatch(
    /^One order: 16.*the supplier’s minimum: .* to Bench, .* to Frame/,
  );
  expect(trade).toBe(64_000);
});

test("two pieces of one name at an item keep each its own count, supplier and sum", async () => {
  const all = files("");
  const den = all["projects/quay/den.md"].replace(
    "count: 2 }]",
    "count: 2 }, { what: iron pole, supplier: mill, trade: 5, count: 7 }]",
  );
  const computed = await computedFolder({ ...all, "projects/quay/den.md": den });
  const page = computed.pages.find((p) => (p.model as { kind: string }).kind === "orders");
  const model = page?.model as unknown as Orders;
  const pieces = model.pieces.filter((p) => p.what.html.startsWith("iron pole"));
  expect(pieces.map((p) => [p.count, p.supplier, p.sum])).toEqual([
    ["2", "The forge", "$120.00"],
    ["7", "The mill", "$35.00"],
  ]);
});

test("where a project has several rooms, what is bought ready says for which of them", async () => {
  const room = (name: string) =>
    `room: ${name}\ncloths: [linen]\nitems:\n  - cushion: Bed\n    cloth: linen\n    size: 20" x 20"\n    maker: frame`;
  const two = {
    ...files(""),
    "projects/quay/den.md": room("Den"),
    "projects/quay/loft.md": room("Loft"),
  };
  const page = (await computedFolder(two)).pages.find(
    (p) => (p.model as { kind: string }).kind === "orders",
  );
  const model = page?.model as unknown as {
    materials: { what: { html: string }; item: string }[];
  };
  const { materials } = model;
  const inserts = materials.filter((m) => m.what.html.startsWith("Feather insert"));
  expect(inserts.map((m) => m.item)).toEqual(["Bed, den", "Bed, loft"]);
});
