import { expect, test } from "vitest";
import type { RoomData } from "../../src/documents/projectData.ts";
import { colourWords, whereTold } from "../../src/documents/room/whereTold.ts";
import { roomOf } from "../room/roomOf.ts";

const count = 9;
const room = roomOf(
  `room: R
height: 100"
cloths: [rose]
items:
${Array.from({ length: count }, (_, n) => `  - { cushion: Number ${n + 1}, cloth: rose, size: 16" x 16", edge: knife }`).join("\n")}
`,
  { cloths: { rose: `cloth: Rose\nwidth: 54"` } },
);
const carried = room.items.map(({ record }) => ({ id: record.id, title: record.title }));
const data = {
  ...room,
  scheme: {
    roles: [{ cloth: "rose", name: "Rose" }],
    carried: [{ colour: { name: "pink", hex: "#cc8888" }, items: carried }],
  },
} as unknown as RoomData;
const told = (heightMm: number) =>
  whereTold(
    data,
    "en-US",
    () => "Plain",
    () => ({ listWidth: 150, nameWidth: 42 }),
    heightMm,
  );

test("nine pillows of one cloth are counted, and a colour's places are told in full where the page has room", () => {
  const { rows } = told(200);
  expect(rows[0]?.where).toBe("Nine pillows");
  expect(rows[1]?.where).toBe(
    "Number 1, number 2, number 3, number 4, number 5, number 6, number 7, number 8 and number 9",
  );
});

test("where the page is full, a colour's places are fewer and the others counted, and the rows keep to their height", () => {
  const low = told(21.5);
  expect(low.rows[1]?.where).toBe("Number 1, number 2, number 3, number 4, number 5 and 4 more");
  expect(low.heightMm).toBeLessThanOrEqual(21.5);
});

test("one place more is named, as the words for it are no longer; a colour of no place says so", () => {
  expect(colourWords(data, carried.slice(0, 4), 3)).toBe(
    "Number 1, number 2, number 3 and number 4",
  );
  expect(colourWords(data, [], 3)).toBe("Nowhere yet");
  expect(colourWords(data, [], 3, ["Bay", "Bay", "Bed quilt"])).toBe(
    "Small touches: bay and bed quilt",
  );
});

test("thirteen cloths with names of sixty letters: each name has one line, and the page holds every row", () => {
  const name = "The very long name of a cloth that somebody wished to call so";
  const many = {
    ...data,
    scheme: {
      roles: Array.from({ length: 13 }, () => ({ cloth: "rose", name })),
      carried: Array.from({ length: 4 }, () => data.scheme.carried[0]),
    },
  } as unknown as RoomData;
  const columns = () => ({ listWidth: 205, nameWidth: 62 });
  const full = whereTold(many, "en-US", () => "Plain", columns, 200);
  expect(full.heightMm).toBeLessThanOrEqual(200);
  expect(full.rows[0]?.name).toMatch(/…$/);
  expect(full.nameWidth).toBeGreaterThan(62);
  // Where there is room the names keep what they ask for.
  const roomy = whereTold(many, "en-US", () => "Plain", columns, 400);
  expect([roomy.nameWidth, (roomy.rows[0]?.name.length ?? 0) > 50]).toEqual([62, true]);
});
