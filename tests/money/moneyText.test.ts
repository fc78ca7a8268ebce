import { expect, test } from "vitest";
import { moneyText } from "../../src/money/moneyText.ts";
import { itemsCalled, itemsInRoom } from "../../src/quantities/text/itemsCalled.ts";
import { PROJECT } from "../quantities/studioOf.ts";
import { pricedOf } from "./priced.ts";
import { priced, ROOM, small } from "./pricedStudio.ts";

// Sums worked out by hand in projectMoney.test.ts; the layout is the project's own.

const FEE = `${PROJECT}\nfees: { design: 100 }`;
const files = small({ project: FEE, rooms: { den: ROOM, hall: ROOM.replace("Den", "Hall") } });

test("room by room and item by item, each with its own sum; what is the whole project's comes last", () => {
  const text = moneyText(priced(files), null, {
    language: "en-US",
    units: "inches",
    item: () => "One, pillow",
    maker: (id: string) => id,
    room: (id) => (id === "den" ? "Den" : "Hall"),
  });
  const [head, ...lines] = text.split("\n");
  expect(head?.trim().split(/\s+/)).toEqual(["Trade", "Client", "Tax"]);
  const table = lines.slice(0, lines.findIndex((l) => l.startsWith("Trade ")) - 1);
  const labels = table.map((l) => l.replace(/ {2,}\$.*$/, ""));
  expect(labels).toEqual([
    "Den",
    "  One, pillow",
    "    cloth: Plain",
    "    making",
    "",
    "Hall",
    "  One, pillow",
    "    cloth: Plain",
    "    making",
    "",
    "For the whole project",
    "  Design fee",
  ]);
  // Sums stand under each other, and an item's is that of its lines: 1.5 yd for both rooms together, half each.
  const ends = new Set(table.filter((l) => l !== "").map((l) => l.length));
  expect(ends.size).toBe(1);
  const sums = (at: number) =>
    [...(table[at] ?? "").matchAll(/\$([\d.]+)/g)].map((m) => Number(m[1]));
  for (const from of [0, 5])
    for (const column of [0, 1, 2]) {
      const of = (i: number) => sums(from + i)[column] ?? Number.NaN;
      expect(of(1)).toBeCloseTo(of(2) + of(3), 6);
      expect(of(0)).toBeCloseTo(of(1), 6);
    }
});

test("an item is called by its title and kind, with its room only where two rooms have one of that name", () => {
  const { quantities } = pricedOf(files);
  expect(itemsInRoom(quantities, "en-GB")("den", "cushion-one")).toBe("One, cushion");
  expect(itemsCalled(quantities, "en-US")("hall", "cushion-one")).toBe("Hall: One, pillow");
  expect(itemsCalled(quantities, "en-US")("hall", "nothing")).toBe("nothing");
  const alone = pricedOf(small()).quantities;
  expect(itemsCalled(alone, "en-US")("den", "cushion-one")).toBe("One, pillow");
});
