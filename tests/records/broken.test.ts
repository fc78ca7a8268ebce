import { expect, test } from "vitest";
import { diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { changed, ROOM, read, STUDIO } from "./studio.ts";

/** A second project beside the first, which uses the linen only. */
const MILL = {
  "projects/mill/project.md":
    "---\nproject: Mill\nclient: { name: B. Ash }\nstatus: enquiry\n---\n",
  "projects/mill/snug.md":
    '---\nroom: Snug\nitems: [{ cushion: Seat, cloth: slub-linen, size: 20" x 20" }]\n---\n',
};

test("an error in a room stops its project only", () => {
  const records = read({ ...MILL, ...changed(ROOM, 'drop: 92"', "drop: 92") });
  expect(records.stopped).toEqual([{ project: "quay", because: [ROOM] }]);
  expect(records.projects.map((p) => [p.id, p.broken, p.rooms.length])).toEqual([
    ["mill", false, 1],
    ["quay", true, 0],
  ]);
});

test("an error in a card stops those who use it, and the card is left out", () => {
  const records = read({
    ...MILL,
    ...changed("cloths/fern-trellis.md", 'width: 54"', "width: 54"),
  });
  expect(records.stopped).toEqual([{ project: "quay", because: ["cloths/fern-trellis.md"] }]);
  expect([...records.cloths.keys()]).toEqual(["slub-linen"]);
  // The room itself has no fault: nothing is said of it, and it is there.
  expect(records.diagnostics.map((d) => d.file)).toEqual(["cloths/fern-trellis.md"]);
  expect(records.projects.find((p) => p.id === "quay")?.rooms).toHaveLength(1);
});

test("an error in an object stops those who use it", () => {
  const records = read({
    ...MILL,
    ...changed("objects/tiled-stove.md", "stays: yes", "stays: maybe"),
  });
  expect(records.stopped).toEqual([{ project: "quay", because: ["objects/tiled-stove.md"] }]);
});

test("an error in a card that nobody uses stops nobody", () => {
  const records = read({ ...MILL, "cloths/spare.md": "---\ncloth: Spare\nwidth: 54\n---\n" });
  expect(records.stopped).toEqual([]);
  expect(records.cloths.has("spare")).toBe(false);
});

test("an error in studio.md stops all", () => {
  const records = read({ ...MILL, ...changed("studio.md", "currency: USD", "currency: shells") });
  expect(records.studio).toBeNull();
  expect(records.stopped).toEqual([
    { project: "mill", because: ["studio.md"] },
    { project: "quay", because: ["studio.md"] },
  ]);
});

test("makers are still known when another line of studio.md is wrong, so no room is blamed", () => {
  const { diagnostics } = read(changed("studio.md", "currency: USD", "currency: shells"));
  expect(diagnostics.map((d) => d.file)).toEqual(["studio.md"]);
});

test("an unreadable studio.md brings no blame on rooms", () => {
  const { diagnostics } = read({ "studio.md": "---js\n---\n" });
  expect(diagnostics.map((d) => [d.file, d.code])).toEqual([
    ["studio.md", "front-matter-language"],
  ]);
});

test("a project whose card cannot be read is named among the stopped", () => {
  const records = read({ ...MILL, "projects/quay/project.md": "no front matter" });
  expect(records.projects.map((p) => p.id)).toEqual(["mill"]);
  expect(records.stopped.map((s) => s.project)).toEqual(["quay"]);
});

test("a file that the folder's reader refused counts as one with an error", () => {
  const refused = (file: string) =>
    diagnostic(
      { file, line: null, column: null, keyPath: null },
      "link-refused",
      "This is a link.",
    );
  const room = read({ ...MILL, [ROOM]: null }, { problems: [refused(ROOM)] });
  expect(room.stopped.map((s) => s.project)).toEqual(["quay"]);
  const card = read(
    { ...MILL, "cloths/fern-trellis.md": null },
    { problems: [refused("cloths/fern-trellis.md")] },
  );
  expect(card.stopped).toEqual([{ project: "quay", because: ["cloths/fern-trellis.md"] }]);
  expect(card.diagnostics.map((d) => d.code)).toEqual(["link-refused"]);
  const folder = read(MILL, { problems: [refused("projects/lost/hall.md")] });
  expect(folder.stopped.map((s) => s.project)).toEqual(["lost"]);
});

test("rooms come in the project's order, then by file name", () => {
  const files = {
    "projects/quay/attic.md": "---\nroom: Attic\n---\n",
    "projects/quay/snug.md": "---\nroom: Snug\n---\n",
    ...changed(
      "projects/quay/project.md",
      "status: proposed",
      "status: proposed\nrooms: [snug, dining-room]",
    ),
  };
  expect(read(files).projects[0]?.rooms.map((room) => room.id)).toEqual([
    "snug",
    "dining-room",
    "attic",
  ]);
  expect(
    read({
      ...files,
      "projects/quay/project.md": STUDIO["projects/quay/project.md"] as string,
    }).projects[0]?.rooms.map((room) => room.id),
  ).toEqual(["attic", "dining-room", "snug"]);
});

test("a record says where each of its keys stands", () => {
  const room = read().projects[0]?.rooms[0];
  expect(room?.place(["walls", 0, "windows", 0, "sill"])).toEqual({
    file: ROOM,
    line: 9,
    column: 59,
    keyPath: "walls[0].windows[0].sill",
  });
  expect(room?.place(["walls", 0, "breast"])).toEqual({
    file: ROOM,
    line: 6,
    column: 5,
    keyPath: "walls[0].breast",
  });
  const curtains = room?.items[1];
  expect(curtains?.place(["drop"])).toEqual({
    file: ROOM,
    line: 18,
    column: 5,
    keyPath: "items[1].drop",
  });
  expect(curtains?.place([])).toEqual({ file: ROOM, line: 15, column: 5, keyPath: "items[1]" });
});

test("a starting file's blank is asked about at its place, and stops nothing", () => {
  const records = read({
    "projects/mill/project.md": MILL["projects/mill/project.md"].replace("B. Ash", "(write here)"),
    "projects/mill/snug.md": MILL["projects/mill/snug.md"],
  });
  expect(records.stopped).toEqual([]);
  expect(records.diagnostics.filter((d) => d.code === "still-blank")).toMatchObject([
    { file: "projects/mill/project.md", line: 3, severity: "warning", keyPath: "client.name" },
  ]);
});
