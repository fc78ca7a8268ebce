import { expect, test } from "vitest";
import { hasErrors } from "../../src/diagnostics/diagnostic.ts";
import { FAULTS } from "./faults/all.ts";
import { line, ROOM, read, STUDIO, said } from "./studio.ts";

const CODES = { findingCodes: ["rungs-close", "no-main-cloth"] };

test("the small studio is without a fault", () => {
  const { diagnostics, stopped, studio, projects } = read({}, CODES);
  expect(diagnostics.map(line)).toEqual([]);
  expect(stopped).toEqual([]);
  expect(studio?.fields.studio).toBe("Larkfield Rooms");
  expect(
    projects.map((p) => [p.id, p.broken, p.rooms.map((r) => r.items.map((i) => i.id))]),
  ).toEqual([["quay", false, [["object-tiled-stove", "curtains-bay", "cushion-window-seat"]]]]);
});

test.each(FAULTS)("$name", ({ files, says }) => {
  expect(said(files, CODES)).toEqual(says);
});

test.each(FAULTS)("$name: an error stops the project, a warning does not", ({ files }) => {
  const { diagnostics, stopped } = read(files, CODES);
  // A card that no room uses stops nothing.
  const unused = diagnostics.every(
    (d) => d.severity === "warning" || d.file === "cloths/Slub Linen.md",
  );
  if (hasErrors(diagnostics) && !unused) expect(stopped.map((s) => s.project)).toEqual(["quay"]);
  else expect(stopped).toEqual([]);
});

test("each message has its words, its place and how to mend it", () => {
  for (const { files } of FAULTS) {
    for (const d of read(files, CODES).diagnostics) {
      expect(d.message).toMatch(/^\P{Ll}.*\.$/su);
      expect(d.hint).toBeTruthy();
      if (d.line !== null && d.code !== "file-empty")
        expect(d.excerpt).toBe((files[d.file] ?? STUDIO[d.file])?.split("\n")[d.line - 1]);
    }
  }
});

test("line ends of Windows and a byte-order mark move no place", () => {
  const room = (STUDIO[ROOM] as string).replace('drop: 92"', "drop: 92");
  const plain = said({ [ROOM]: room });
  expect(plain).toHaveLength(1);
  expect(said({ [ROOM]: `\ufeff${room.replace(/\n/g, "\r\n")}` })).toEqual(plain);
});

test("a card or a room that is there and cannot be read is not said to be missing", () => {
  const gone = { "cloths/slub-linen.md": null };
  const present = ["cloths/fern-trellis.jpg", "cloths/slub-linen.md", "projects/quay/snug.md"];
  expect(said(gone).map((each) => each.split(" ")[2])).toContain("cloth-unknown:");
  expect(said(gone, { present })).toEqual([]);
  const named = {
    "projects/quay/project.md": (STUDIO["projects/quay/project.md"] as string).replace(
      "status:",
      "rooms: [dining-room, snug]\nstatus:",
    ),
  };
  expect(said(named)).toHaveLength(1);
  expect(said(named, { present })).toEqual([]);
});
