import { expect, test } from "vitest";
import { clothPlaces } from "../../src/documents/room/whereWords.ts";
import { roomOf } from "../room/roomOf.ts";

const cloths = Object.fromEntries(
  ["rose", "sorrel", "chaff"].map((id) => [
    id,
    `cloth: ${id.charAt(0).toUpperCase() + id.slice(1)}\nwidth: 54"`,
  ]),
);
const room = roomOf(
  `room: R
height: 100"
floor: 240" x 200"
walls:
  - { wall: north, length: 240", windows: [{ window: bay, from-left: 60", size: 60" x 60", sill: 30" }] }
  - { wall: east, length: 200" }
  - { wall: south, length: 240" }
  - { wall: west, length: 200" }
items:
  - armchair: Stove chair
    at: { floor: 60" x 60", facing: south }
    cloth: rose
    type: club
    size: 30" x 32" x 38"
    welt: sorrel
  - cushion: Stove chair
    at: { on: armchair-stove-chair }
    cloth: chaff
    back: sorrel
    size: 16" x 16"
    edge: knife
  - cushion: Settle back
    cloth: chaff
    back: rose
    count: 3
    size: 18" x 18"
    edge: { welt: sorrel }
  - curtains: Bay
    at: bay
    cloth: rose
    lining: chaff
    heading: pinch-pleat
  - armchair: Carvers
    cloth: rose
    count: 2
    type: occasional
    size: 25" x 23" x 41"
`,
  { cloths },
);
const say = (cloth: string, language: "en-US" | "en-GB" = "en-US"): string =>
  clothPlaces(cloth, room as never, language).join("; ");

test("each title stands once, with the parts that are in the cloth, and no kind that the title says already", () => {
  expect(say("sorrel")).toBe(
    "Stove chair: welt, and back of its pillow; Settle back: welts of the pillows",
  );
  expect(say("rose")).toBe(
    "Stove chair; Settle back: backs of the pillows; Bay: drapery; Carvers: two armchairs",
  );
});

test("linings are not seen, and the words are those of the studio's language", () => {
  expect(say("chaff")).toBe("Stove chair: pillow; Settle back: three pillows");
  expect(say("sorrel", "en-GB")).toBe(
    "Stove chair: piping, and back of its cushion; Settle back: piping of the cushions",
  );
});
