import { expect, test } from "vitest";
import { moneyText } from "../../src/money/moneyText.ts";
import { moneyJson } from "../../src/money/toJson.ts";
import { PROJECT, quantitiesOf } from "../quantities/studioOf.ts";
import { CUSHION, lineOf, PLAIN, priced, ROOM, STUDIO, small } from "./pricedStudio.ts";

// Sums worked out by hand beside each test; the scenario is made up.

test("a cushion: two faces of 21 in side by side are 21 in, bought as 3/4 yd; making at the rate; tax on goods alone", () => {
  const money = priced(small());
  // 3/4 yd x 10 = 7.50 trade, x 2 = 15.00 client, 10 % tax 1.50; making 30 trade, x 1.5 = 45.00, untaxed.
  expect(lineOf(money, "cloth")).toMatchObject({
    trade: { minor: 750n },
    client: { minor: 1500n },
    tax: { minor: 150n },
  });
  expect(lineOf(money, "making")).toMatchObject({
    trade: { minor: 3000n },
    client: { minor: 4500n },
    tax: { minor: 0n },
  });
  expect(money.totals).toMatchObject({
    total: { minor: 6150n },
    budget: { minor: 20_000n },
    remaining: { minor: 13_850n },
  });
  expect(money.diagnostics).toEqual([]);
});

test("a client price on the card stands before the markup; below trade it is warned of", () => {
  const card = (client: string) => PLAIN.replace("trade: 10,", `trade: 10, client: ${client},`);
  expect(lineOf(priced(small({ cloths: { plain: card("24") } })), "cloth")?.client.minor).toBe(
    1800n,
  );
  expect(
    priced(small({ cloths: { plain: card("4") } })).diagnostics.map((d) => [d.code, d.severity]),
  ).toEqual([["client-below-trade", "warning"]]);
});

test("so is an object that is sold below its trade price, at the line of its card", () => {
  const chest = (client: string) =>
    priced(
      small({
        objects: {
          chest: `object: Chest\nsize: 40" x 20" x 30"\nprice: { trade: 200, client: ${client} }`,
        },
        rooms: { den: `${ROOM.trimEnd()}\n  - object: chest\n` },
      }),
    ).diagnostics.map((d) => [d.code, d.severity, d.file, d.keyPath]);
  expect(chest("199.99")).toEqual([
    ["client-below-trade", "warning", "objects/chest.md", "price.client"],
  ]);
  expect(chest("200")).toEqual([]);
});

test("a cloth that is priced each, and one by the roll, is told by its own word: a length of it is bought", () => {
  const told = (per: string) =>
    priced(small({ cloths: { plain: PLAIN.replace("per: yard", `per: ${per}`) } })).diagnostics.map(
      (d) => [d.code, d.keyPath, d.message],
    );
  expect(told("each")).toEqual([
    ["price-for-another-unit", "price.per", "Plain is priced each, but a length of it is bought."],
  ]);
  expect(told("roll")[0]?.[2]).toBe("Plain is priced by the roll, but a length of it is bought.");
  expect(told("yard")).toEqual([]);
});

test("so is a pole that is sold below its own trade price", () => {
  const pole = (client: string) =>
    priced(
      small({
        rooms: {
          den: `${ROOM.trimEnd()}\n    hardware: [{ what: pole, trade: 85, client: ${client} }]`,
        },
      }),
    ).diagnostics.map((d) => [d.code, d.severity, d.keyPath]);
  expect(pole("50")).toEqual([["client-below-trade", "warning", "items[0].hardware[0].client"]]);
  expect(pole("119")).toEqual([]);
});

test("the price of a whole bolt, written where that of one yard stands, is asked about", () => {
  const bolt = (trade: string) =>
    priced(
      small({
        cloths: {
          plain: PLAIN.replace(
            "trade: 10,",
            `trade: 10, bolt: { length: 30 yd, trade: ${trade} },`,
          ),
        },
      }),
    ).diagnostics.map((d) => [d.code, d.severity, d.hint]);
  expect(bolt("240")).toEqual([
    ["bolt-dearer", "warning", "What stands here is for one yard, not for the whole bolt."],
  ]);
  expect(bolt("8")).toEqual([]);
  expect(bolt("10")).toEqual([]);
});

test("what has no price yet stands open and is said; the rest goes on", () => {
  const money = priced(small({ cloths: { plain: PLAIN.replace(/\nprice.*/, "") } }));
  expect(lineOf(money, "cloth")).toMatchObject({ open: true, client: { minor: 0n } });
  expect(money.diagnostics.map((d) => d.code)).toEqual(["cloth-without-price"]);
  const unpaid = priced(
    small({ studio: STUDIO.replace("cushion: 30 per item", "curtains: 30 per width") }),
  );
  expect(lineOf(unpaid, "making")).toMatchObject({ open: true });
  expect(unpaid.diagnostics.map((d) => [d.code, d.line])).toEqual([["making-without-rate", 5]]);
});

test("a charge that is missing is asked of the maker by name; of nobody where nobody makes it", () => {
  const hintOf = (studio: string, room = ROOM): string | null | undefined =>
    priced(small({ studio, rooms: { den: room } })).diagnostics.find(
      (d) => d.code === "making-without-rate",
    )?.hint;
  expect(hintOf(STUDIO.replace("cushion: 30 per item", "curtains: 30 per width"))).toContain(
    "Add `rates: { cushion: … per item }` to Bench in studio.md, or `making: …` to the item.",
  );
  const nobody = hintOf(
    STUDIO.replace(/makes: \[[^\]]*\]/, "makes: [wallpaper]"),
    ROOM.replace(/ +maker: .*\n/, ""),
  );
  expect(nobody).toContain(
    "Nobody makes it yet: add one who makes it to `makers` in studio.md, with `makes: [cushion]` and `rates: { cushion: … per item }`, or `making: …` to the item.",
  );
  expect(nobody).not.toContain("its maker");
});

test("a rate by what the making cannot be counted by is said as that, with one that it can", () => {
  const { diagnostics } = priced(
    small({ studio: STUDIO.replace("cushion: 30 per item", "cushion: 30 per metre") }),
  );
  expect(diagnostics.map((d) => d.code)).toEqual(["making-without-rate"]);
  expect(diagnostics[0]?.message).toMatch(/cannot be counted by the metre/);
  expect(diagnostics[0]?.hint).toContain("cushion: … per item");
});

test("a bare rate is per item, and where the kind is as often paid by the width that is said, once", () => {
  const studio = STUDIO.replace("cushion: 30 per item", "cushion: 30, curtains: 48");
  const pair = (title: string) =>
    `  - curtains: ${title}\n    cloth: plain\n    pole: 60"\n    drop: 80"\n    heading: pencil-pleat\n    maker: bench\n`;
  const { diagnostics, lines } = priced(
    small({ studio, rooms: { den: `${ROOM}${pair("East")}${pair("West")}` } }),
  );
  const said = diagnostics.filter((d) => d.code === "rate-without-unit");
  expect(said.map((d) => [d.severity, d.file, d.hint])).toEqual([
    ["warning", "studio.md", "Write 48 per width, or 48 per item if that is what it is."],
  ]);
  // 30, 48 and 48, each half as much again.
  expect(lines.filter((l) => l.what === "making").map((l) => Number(l.client.minor))).toEqual([
    4500, 7200, 7200,
  ]);
  const clear = priced(
    small({
      studio: STUDIO.replace("cushion: 30 per item", "cushion: 30, curtains: 48 per item"),
      rooms: { den: `${ROOM}${pair("East")}` },
    }),
  );
  expect(clear.diagnostics.map((d) => d.code)).not.toContain("rate-without-unit");
});

test("an agreed making charge stands before the rate", () => {
  const money = priced(
    small({ rooms: { den: ROOM.replace("maker: bench", "maker: bench\n    making: 12") } }),
  );
  expect(lineOf(money, "making")).toMatchObject({
    trade: { minor: 1200n },
    client: { minor: 1800n },
  });
});

test("the client's own cloth costs nothing, but its making does", () => {
  const money = priced(
    small({ rooms: { den: ROOM.replace("maker: bench", "maker: bench\n    owner: client") } }),
  );
  expect(lineOf(money, "cloth")).toBeUndefined();
  expect(lineOf(money, "making")?.client.minor).toBe(4500n);
});

test("two items share what is bought of one cloth by the cloth that they take, to the last cent", () => {
  const two = `${ROOM}${CUSHION.replace("One", "Two").replace('20" x 20"', '12" x 12"')}`;
  const money = priced(small({ rooms: { den: two } }));
  const shares = money.lines.filter((l) => l.what === "cloth").map((l) => l.client.minor);
  expect(shares).toHaveLength(2);
  expect((shares[0] as bigint) > (shares[1] as bigint)).toBe(true);
  const yards = quantitiesOf(small({ rooms: { den: two } })).cloths[0]?.buy.amount.valueOf() ?? 0;
  expect(Number(shares.reduce((a, b) => a + b, 0n))).toBe(Math.round(yards * 2000));
});

test("fees, freight, samples and the reserve", () => {
  const money = priced(
    small({
      studio: `${STUDIO}\nfreight: { cloth: 10 }\ncontingency: 5`,
      project: `${PROJECT}\nfees: { design: 100 }`,
      cloths: { plain: `${PLAIN}\nsample: { fee: 3, credited: no }` },
      rooms: { den: `${ROOM.replace("budget: 200", "cloths: [plain]")}` },
    }),
  );
  expect(lineOf(money, "freight")).toMatchObject({ trade: { minor: 75n } });
  expect(lineOf(money, "fee")).toMatchObject({
    client: { minor: 10_000n },
    trade: { minor: 0n },
    room: null,
  });
  expect(lineOf(money, "sample")).toMatchObject({ trade: { minor: 300n }, client: { minor: 0n } });
  // 15.00 + 0.75 goods with 10 % (1.58), 45.00 making, 100.00 fee: 162.33; five per cent of it 8.12 (half up from 8.1165).
  expect(lineOf(money, "reserve")?.client.minor).toBe(812n);
  expect(money.totals.total.minor).toBe(17_045n);
  const credited = priced(
    small({
      cloths: { plain: `${PLAIN}\nsample: { fee: 3, credited: yes }` },
      rooms: { den: ROOM.replace("budget: 200", "cloths: [plain]") },
    }),
  );
  expect(lineOf(credited, "sample")).toBeUndefined();
});

test("prices that hold the tax already: the total is the sum of the prices", () => {
  const money = priced(
    small({ studio: STUDIO.replace("services: 0 }", "services: 0, included: yes }") }),
  );
  // 15.00 with 10 % held: 1.36.
  expect(lineOf(money, "cloth")?.tax.minor).toBe(136n);
  expect(money.totals.total.minor).toBe(6000n);
});

test("the machine form: minor units under keys that stay", () => {
  const json = moneyJson(priced(small()));
  expect(json).toMatchObject({
    project: "test",
    currency: "USD",
    totals: { trade: 3750, client: 6000, tax: 150, total: 6150, budget: 20_000, remaining: 13_850 },
  });
  expect(json.lines[0]).toMatchObject({
    room: "den",
    item: "cushion-one",
    what: "cloth",
    trade: 750,
    client: 1500,
    tax: 150,
  });
  expect(json.phases).toEqual([{ phase: 1, total: 6150, commitment: 1 }]);
  expect(moneyText(priced(small()), null)).toContain("Budget $200.00; $138.50 left.");
});
