import { expect, test } from "vitest";
import { drawColours } from "../../src/scheme/palette.ts";
import { CREAM, GREEN, print, ROOM, with_ } from "./goodRoom.ts";
import { schemeOf, swatchOf } from "./roomOf.ts";

// How a palette is drawn is common practice, no source; distances are CIEDE2000 (CIE 142-2001), tested in tests/colour.

const BLUE = "#2a4f8f";
const RED = "#b0302a";

test("the palette is drawn from the main cloth, as many as asked, the largest share first", () => {
  const three = schemeOf({ ...ROOM, room: "colours: 3" });
  expect(three.palette.source).toMatchObject({ from: "main-cloth", id: "fern" });
  expect(three.palette.colours.map((c) => c.hex)).toEqual([CREAM, GREEN, "#9b4529"]);
  expect(three.palette.colours.map((c) => c.shareOfSource)).toEqual([0.6, 0.25, 0.1]);
  expect(schemeOf(ROOM).palette.colours).toHaveLength(4);
});

test("a piece that stays comes before the main cloth", () => {
  const anchored = schemeOf({
    ...ROOM,
    room: "anchor: stove\ncolours: 2",
    objects: { stove: { kind: "plain", colours: { [BLUE]: 0.7, [RED]: 0.3 } } },
  });
  expect(anchored.palette.source).toEqual({ from: "anchor", id: "stove", name: "Stove" });
  expect(anchored.palette.colours.map((c) => c.hex)).toEqual([BLUE, RED]);
});

test("a cloth may be the anchor too", () => {
  const scheme = schemeOf({ ...ROOM, room: "anchor: ticking\ncolours: 2" });
  expect(scheme.palette.source).toMatchObject({ from: "anchor", id: "ticking" });
  expect(scheme.palette.colours.map((c) => c.hex)).toEqual([CREAM, GREEN]);
});

test("an anchor without known colours leaves it to the main cloth", () => {
  const scheme = schemeOf({
    ...ROOM,
    room: "anchor: stove",
    objects: { stove: { kind: "plain", colours: {} } },
  });
  expect(scheme.palette.source).toMatchObject({ from: "main-cloth", id: "fern" });
});

test("a list in the room file is taken as it stands, with her names and no shares", () => {
  const scheme = schemeOf({
    ...ROOM,
    room: `colours:\n  - { colour: "${BLUE}", name: Ink }\n  - "${RED}"`,
  });
  expect(scheme.palette.source).toEqual({ from: "room-file", id: null, name: null });
  expect(scheme.palette.colours.map((c) => [c.hex, c.named, c.shareOfSource])).toEqual([
    [BLUE, "own", null],
    [RED, "nbs", null],
  ]);
  expect(scheme.palette.colours[0]?.name).toBe("Ink");
});

test("nothing to draw from gives no colours", () => {
  const bare = schemeOf({ cloths: {}, seen: [] });
  expect(bare.palette).toEqual({
    colours: [],
    source: { from: "nothing", id: null, name: null },
  });
});

test("a vivid accent of two parts in a hundred is drawn before a near twin of the ground", () => {
  const { colours } = swatchOf("cloth", {
    kind: "large-print",
    colours: { "#efe4cb": 0.6, "#dccba4": 0.28, [GREEN]: 0.1, [RED]: 0.02 },
  });
  expect(drawColours(colours, 3).map((c) => c.hex)).toEqual(["#efe4cb", GREEN, RED]);
});

test("twins nearer than six are drawn once, though fewer colours come out than were asked for", () => {
  const { colours } = swatchOf("cloth", {
    kind: "plain",
    colours: { "#808080": 0.6, "#818181": 0.4 },
  });
  expect(drawColours(colours, 4).map((c) => c.hex)).toEqual(["#808080"]);
});

test("shares: nothing that is seen falls below one part in a hundred, and the parts stay a hundred", () => {
  const scheme = schemeOf(
    with_(
      { speck: { ...print(20), colours: { [BLUE]: 1 } } },
      { seen: [...ROOM.seen, { cloth: "speck", areaMm2: 0.02e6 }] },
    ),
  );
  const blue = scheme.shares.find((s) => s.hex === BLUE);
  expect(blue?.hundredths).toBe(1);
  expect(scheme.shares.reduce((a, s) => a + s.hundredths, 0)).toBe(100);
});
