import { expect, test } from "vitest";
import { CUSHION, lineOf, PLAIN, priced, ROOM, STUDIO, small } from "./pricedStudio.ts";

// Markups, hardware and objects: common practice, no source; sums worked out by hand.

const paper = `cloth: Paper\ntype: wallcovering\nkind: plain\nroll: { width: 20 1/2", length: 11 yd }\nprice: { trade: 4, per: roll }`;
const papered = `room: Den\nheight: 8'\nfloor: 10' x 10'\nitems:\n  - wallpaper: Walls\n    on: walls\n    cloth: paper\n    making: 1\n`;

test("linings, wallcoverings and trims take the markup of cloth where the studio gives them none of their own", () => {
  const ratio = (studio: string): number => {
    const line = lineOf(
      priced(small({ studio, cloths: { paper }, rooms: { den: papered } })),
      "wallcovering",
    );
    return Number(line?.client.minor) / Number(line?.trade.minor);
  };
  expect(ratio(STUDIO)).toBe(2);
  expect(ratio(STUDIO.replace("cloth: 2,", "cloth: 2, wallcovering: 1.25,"))).toBe(1.25);
  for (const type of ["lining", "trim"] as const) {
    const card = { plain: `${PLAIN}\ntype: ${type}` };
    const of = (studio: string) => lineOf(priced(small({ studio, cloths: card })), type);
    expect(of(STUDIO)?.client.minor, type).toBe(1500n);
    expect(of(STUDIO.replace("cloth: 2,", `cloth: 2, ${type}: 1.2,`))?.client.minor, type).toBe(
      900n,
    );
  }
});

test("hardware: its price times how many, with its own markup, goods for the tax", () => {
  const pole = (more: string) =>
    lineOf(
      priced(
        small({
          studio: STUDIO.replace("cloth: 2,", "cloth: 2, hardware: 1.4,"),
          rooms: { den: `${ROOM}    hardware: [{ what: brass pole, ${more} }]\n` },
        }),
      ),
      "hardware",
    );
  expect(pole("trade: 85, count: 3")).toMatchObject({
    label: "brass pole",
    trade: { minor: 25_500n },
    client: { minor: 35_700n },
    tax: { minor: 3570n },
    open: false,
  });
  expect(pole("trade: 85")?.trade.minor).toBe(8500n);
  expect(pole("trade: 85, client: 100, count: 2")?.client.minor).toBe(20_000n);
  expect(pole("count: 2")).toMatchObject({ open: true, client: { minor: 0n } });
});

test("a pole without a count at an item of which several are made is asked for", () => {
  const warned = (count: string, pole: string) =>
    priced(
      small({
        rooms: { den: `${ROOM}${count}    hardware: [{ what: pole, trade: 85${pole} }]\n` },
      }),
    ).diagnostics.map((d) => [d.code, d.severity, d.keyPath, d.expected]);
  expect(warned("    count: 3\n", "")).toEqual([
    ["hardware-count", "warning", "items[0].hardware[0]", "count: 3"],
  ]);
  expect(warned("    count: 3\n", ", count: 1")).toEqual([]);
  expect(warned("", "")).toEqual([]);
});

const LAMP = `object: Lamp\nshape: lamp\nsize: 12" x 12" x 24"\nprice: { trade: 40 }`;
const lamp = (item = "", card = LAMP) =>
  lineOf(
    priced(
      small({
        studio: STUDIO.replace("cloth: 2,", "cloth: 2, objects: 1.5,"),
        objects: { lamp: card },
        rooms: { den: `${ROOM}  - object: lamp\n${item}` },
      }),
    ),
    "object",
  );

test("an object is charged at its card's price, as often as the room has it", () => {
  expect(lamp()).toMatchObject({ trade: { minor: 4000n }, client: { minor: 6000n } });
  expect(lamp("    count: 2\n")).toMatchObject({
    trade: { minor: 8000n },
    client: { minor: 12_000n },
  });
  expect(lamp("", LAMP.replace("trade: 40", "trade: 40, client: 75"))?.client.minor).toBe(7500n);
});

test.each([
  ["that is there already", "    existing: yes\n", LAMP],
  ["of the client's", "", `${LAMP}\nowner: client`],
  ["that stays", "", `${LAMP}\nstays: yes`],
])("an object %s costs nothing", (_, item, card) => {
  expect(lamp(item, card)).toBeUndefined();
});

test("freight: the supplier's own share stands before the studio's, and is marked up as freight", () => {
  const studio = `${STUDIO.replace("cloth: 2,", "cloth: 2, freight: 1.2,")}\nfreight: { cloth: 10 }\nsuppliers:\n  mill: { name: Mill, freight: 20 }\n  shed: { name: Shed }`;
  const of = (supplier: string) =>
    lineOf(priced(small({ studio, cloths: { plain: `${PLAIN}\n${supplier}` } })), "freight");
  // 7.50 of cloth: 10 % is 0.75, 20 % is 1.50.
  expect(of("supplier: mill")).toMatchObject({ trade: { minor: 150n }, client: { minor: 180n } });
  expect(of("supplier: shed")).toMatchObject({ trade: { minor: 75n }, client: { minor: 90n } });
});

test("freight of poles and objects: what their supplier states, and nothing where none is named", () => {
  const studio = `${STUDIO.replace("cloth: 2,", "cloth: 2, freight: 1.2,")}\nfreight: { cloth: 10 }\nsuppliers:\n  smith: { name: Smith, freight: 5 % }\n  shed: { name: Shed }`;
  const freightOf = (room: string, card: string) =>
    priced(small({ studio, objects: { lamp: card }, rooms: { den: `${ROOM}${room}` } }))
      .lines.filter((l) => l.what === "freight" && l.cloth === null)
      .map((l) => [l.item, l.trade.minor, l.client.minor, l.tax.minor]);
  const pole = (more: string) => `    hardware: [{ what: pole, trade: 85, count: 3${more} }]\n`;
  // 5 % of 255.00 is 12.75, charged at 15.30; of two lamps at 40.00 it is 4.00, charged at 4.80. Goods are taxed at 10 %.
  expect(freightOf(pole(", supplier: smith"), LAMP)).toEqual([["cushion-one", 1275n, 1530n, 153n]]);
  expect(freightOf(pole(", supplier: shed"), LAMP)).toEqual([]);
  expect(freightOf(pole(""), LAMP)).toEqual([]);
  const lamps = "  - object: lamp\n    count: 2\n";
  expect(freightOf(lamps, `${LAMP}\nsupplier: smith`)).toEqual([["object-lamp", 400n, 480n, 48n]]);
  expect(freightOf(lamps, LAMP)).toEqual([]);
});

test("a credited sample of a cloth that is never bought is a cost all the same", () => {
  const cloths = { plain: `${PLAIN}\nsample: { fee: 3, credited: yes }` };
  const listed = ROOM.replace("budget: 200", "cloths: [plain]");
  const own = listed.replace("maker: bench", "maker: bench\n    owner: client");
  expect(lineOf(priced(small({ cloths, rooms: { den: listed } })), "sample")).toBeUndefined();
  expect(lineOf(priced(small({ cloths, rooms: { den: own } })), "sample")?.trade.minor).toBe(300n);
});

test("a second room: the project has a budget only where every room has one", () => {
  const two = (second: string) =>
    priced(
      small({
        rooms: { den: ROOM, hall: `room: Hall\n${second}items:\n${CUSHION}` },
      }),
    ).totals.budget?.minor;
  expect(two("budget: 300\n")).toBe(50_000n);
  expect(two("")).toBeUndefined();
});
