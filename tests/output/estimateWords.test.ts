import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { onDisk } from "../quantities/program.ts";
import type { Built } from "./demo.ts";
import { stagedPages } from "./staged.ts";

const card = (name: string) =>
  `cloth: ${name}\nkind: plain\nwidth: 140 cm\ncolours: [{ colour: "#7a8a5a", share: 100 % }]`;
const FILES = {
  "studio.md": `studio: Fen
language: en-GB
units: centimetres
currency: GBP
paper: a3
makers: { dell: { name: Dell Workroom, makes: [armchair] } }`,
  "cloths/sedge.md": card("Sedge"),
  "cloths/reed.md": card("Reed"),
  "projects/mill/project.md": `project: Mill Cottage
client: { name: The Marlows }
status: proposed`,
  "projects/mill/parlour.md": `room: Parlour
floor: 5 m x 4 m
items:
  - armchair: Reader
    cloth: sedge
    type: club
    size: 80 cm x 85 cm x 80 cm
    piping: reed
  - armchair: Caller
    cloth: sedge
    size: 80 cm x 85 cm x 80 cm
    piping: reed
    pieces:
      - { piece: seat, size: 60 cm x 70 cm }`,
};

const disk = onDisk(FILES);
let built: Built;

beforeAll(async () => {
  built = await stagedPages(join(disk.home, "content"), /^makers\//);
});
afterAll(async () => {
  await built?.remove();
  disk.remove();
});

test("what is only estimated is told in the studio's own vocabulary, at its item and at its cloth", async () => {
  const html = await readFile(join(built.out, "makers/dell/mill/parlour.html"), "utf8");
  const text = html
    .replace(/<(style|script)[\s\S]*?<\/\1>/g, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/&#39;|&#x27;/g, "'")
    .replace(/\s+/g, " ");
  expect(text).toContain("ESTIMATE. The piping's length is not measured");
  expect(text).toContain("An estimate: 1.37 m for the piping of one chair.");
  expect(text).not.toMatch(/\bwelts?\b/i);
});
