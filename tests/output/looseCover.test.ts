import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { onDisk } from "../quantities/program.ts";
import { type Built, buildStudio } from "./demo.ts";
import { pdfPages } from "./pdfPages.ts";
import { stagedPages } from "./staged.ts";

// A loose cover from measured pieces, its cloth washed before it is cut. What its pages must say is common practice, no source.

const FILES = {
  "studio.md": `studio: Fen
language: en-GB
units: centimetres
currency: GBP
paper: a3
makers: { dell: { name: Dell Workroom, makes: [sofa, cushion] } }
suppliers: { weir: { name: Weir Cloths } }`,
  "cloths/sedge.md": `cloth: Sedge
colours: [{ colour: "#7a8a5a", share: 60 % }, { colour: "#efe8d2", share: 40 % }]
kind: geometric
width: 140 cm
repeat: { up: 32 cm, across: 35 cm }
shrinkage: 4 %
shrinkage-across: 2 %
wash-first: yes
supplier: weir`,
  "projects/mill/project.md": `project: Mill Cottage
client: { name: The Marlows }
status: proposed
receipts: [{ cloth: sedge, lot: K4, length: 22 m, on: 2026-11-20 }]`,
  "projects/mill/parlour.md": `room: Parlour
floor: 5 m x 4 m
height: 2.6 m
measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }
items:
  - sofa: Settle
    cloth: sedge
    cover: loose
    type: three-seater
    size: 220 cm x 95 cm x 85 cm
    maker: dell
    pieces:
      - { piece: inside back, size: 180 cm x 70 cm, join: both-sides }
      - { piece: outside back, size: 190 cm x 75 cm, join: both-sides }
      - { piece: seat, size: 180 cm x 80 cm, join: both-sides }
      - { piece: inside arm, size: 60 cm x 80 cm, count: 2 }
      - { piece: outside arm, size: 60 cm x 75 cm, count: 2 }
  - cushion: Pair
    cloth: sedge
    count: 2
    size: 50 cm x 50 cm
    maker: dell`,
};

const disk = onDisk(FILES);
let built: Built;

beforeAll(async () => {
  built = await buildStudio(join(disk.home, "content"));
});
afterAll(async () => {
  await built?.remove();
  disk.remove();
});

test("what would be too small beside the words is drawn over the whole width below them, on the same page", async () => {
  const html = await readFile(join(built.out, "makers/dell/mill/parlour.html"), "utf8");
  expect(html).not.toContain("second page");
  const scales = [...html.matchAll(/, one to (\d+)</g)].map(([, scale]) => Number(scale));
  expect(Math.max(...scales.slice(0, 3))).toBeLessThanOrEqual(40);
  const pages = await pdfPages(join(built.out, "makers/dell/mill/parlour.pdf"));
  const [sofa = "", ...others] = pages.filter((page) => page.includes("Settle"));
  expect(sofa).toMatch(/^.*SofaSettle.*Frontoneto.*Piecesascutoneto.*Clothcheckedforflaws.*$/);
  expect(others.some((page) => page.includes("Piecesascut"))).toBe(false);
  // Sofa, cushions, the plan, and what must be watched: no page is empty.
  expect(pages).toHaveLength(4);
  for (const page of pages) expect(page.length).toBeGreaterThan(200);
});

test("once it is washed the sheet does not ask for it again, whatever else stands open", async () => {
  const washed = onDisk({
    ...FILES,
    "projects/mill/project.md": FILES["projects/mill/project.md"].replace(
      "on: 2026-11-20",
      "on: 2026-11-20, washed: 2026-11-25, repeat: 30.8 cm",
    ),
    "projects/mill/parlour.md": FILES["projects/mill/parlour.md"].replace(/, checked: [^ ]+ /, " "),
  });
  const studio = await stagedPages(join(washed.home, "content"), /^makers\//);
  const html = await readFile(join(studio.out, "makers/dell/mill/parlour.html"), "utf8");
  await studio.remove();
  washed.remove();
  expect(html).toContain("have not been checked on site");
  expect(html).toContain("Washed before it is cut: these are its measures since.");
  expect(html).not.toContain("wash the whole length");
});

test("the workroom reads that it is washed first, the studio what to measure when", async () => {
  const [slip = ""] = await pdfPages(join(built.out, "studio/mill/receiving.pdf"));
  // As it comes it is as its card says; what is left of it is expected after.
  expect(slip).toMatch(
    /Card140cmwiderepeat32cm35cmacross.*Tobewashedbeforeitiscut.*less4alongand2across/,
  );
  const sheet = (await pdfPages(join(built.out, "makers/dell/mill/parlour.pdf"))).join("");
  expect(sheet).toMatch(/NOTFORCUTTINGTheclothhasstilltobewashed/);
  expect(sheet).toMatch(/1372cmbetweentheselvedgesRepeat307cmWashedbeforeitiscut/);
});
