import { expect, test } from "vitest";
import { foldWorks } from "../../src/scheme/foldWorks.ts";
import { wordsIn } from "../../src/units/spelling.ts";
import { CREAM, GREEN, plain, print, ROOM, RUST, stripe, walls, with_ } from "./goodRoom.ts";
import { schemeOf } from "./roomOf.ts";

const fold = (room = ROOM, language = "en-GB") =>
  foldWorks(
    schemeOf(room).findings.filter((f) => f.level === "works"),
    wordsIn(language),
  );

test("what works of each cloth and each colour is folded into one sentence; nothing is lost", () => {
  const all = schemeOf(ROOM).findings.filter((f) => f.level === "works");
  const folded = fold();
  expect(folded.flatMap((f) => f.findings)).toHaveLength(all.length);
  expect(folded.filter((f) => f.code === "cloth-belongs")).toHaveLength(1);
  expect(folded.length).toBeLessThan(all.length);
  expect(folded.find((f) => f.code === "cloth-belongs")?.message).toBe(
    "Fern, Ticking, Sprig and Velvet are wholly in the room's colours.",
  );
});

test("the least share is said where a cloth is not wholly in the palette, and a marking keeps its own sentence", () => {
  const dotted = { ...stripe, colours: { [CREAM]: 0.56, [GREEN]: 0.4, "#4060c0": 0.04 } };
  const leopard = { ...print(30), animal: true, colours: { "#b98a4e": 1 } };
  const room = with_(
    { ticking: dotted, leopard },
    { seen: [...ROOM.seen, { cloth: "leopard", areaMm2: 0.2e6 }], language: "en-US" },
  );
  expect(fold(room, "en-US").find((f) => f.code === "cloth-belongs")?.message).toBe(
    "Fern, Ticking, Sprig and Velvet are in the room's colors, the least of them to 96 %. Leopard is an animal marking, and goes with any colors.",
  );
});

test("carried colours are named with the least and the most places", () => {
  const room = {
    ...ROOM,
    room: `colours:\n  - { colour: "${GREEN}", name: Bottle }\n  - { colour: "${RUST}", name: Rust }`,
    cloths: { ...ROOM.cloths, velvet: { ...plain, colours: { [RUST]: 1 } } },
    seen: [...ROOM.seen, { ...walls, item: "door", zone: "table" as const, areaMm2: 1e6 }],
  };
  expect(fold(room).find((f) => f.code === "colour-carried")?.message).toBe(
    "Bottle and Rust are carried around the room, each in 3 to 4 places.",
  );
  const small = { ...room, room: room.room.replace("Bottle", "bottle") };
  expect(fold(small).find((f) => f.code === "colour-carried")?.message).toMatch(/^Bottle and /);
});
