import { resolve } from "node:path";
import { expect, test } from "vitest";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { openLayouts } from "../../src/site/layouts.ts";
import { computedFolder, saidOf } from "./smallFolder.ts";

/** One item of every kind, as little as may be said of it, all in one room. */
const ITEMS = `
  - curtains: Bay
    at: bay
    cloth: leaf
    pole: 200 cm
    pole-height: 230 cm
    to: floor
    heading: pinch-pleat
  - blind: Small
    at: small
    cloth: slub
    mount: inside
  - roller-blind: Small roller
    at: small
    cloth: slub
    mount: inside
  - tieback: Bay ties
    at: bay
    cloth: slub
  - lampshade: Desk
    cloth: slub
    form: drum
    size: 30 cm x 20 cm
  - pelmet: Bay board
    at: bay
    board: 210 cm
    top-height: 235 cm
    depth: 25 cm
    cloth: slub
  - valance: Small frill
    at: small
    board: 110 cm
    top-height: 225 cm
    depth: 30 cm
    heading: pencil-pleat
    cloth: slub
  - cushion: Settle
    cloth: leaf
    size: 45 cm x 45 cm
  - seat-pad: Stool
    cloth: slub
    size: 40 cm x 40 cm
  - armchair: Reading
    cloth: slub
    type: club
    size: 80 cm x 85 cm x 90 cm
  - sofa: Long
    cloth: slub
    type: sofa
    size: 200 cm x 90 cm x 85 cm
  - dining-chair: Carver
    cloth: slub
    type: seat-and-back
    size: 50 cm x 55 cm x 95 cm
  - drop-in-seat: Hall
    cloth: slub
    size: 45 cm x 42 cm
    thickness: 3 cm
  - ottoman: Box
    cloth: slub
    size: 90 cm x 50 cm x 45 cm
  - headboard: Bed
    cloth: leaf
    size: 150 cm x 6 cm x 70 cm
  - coverlet: Bed
    cloth: slub
    bed: 150 cm x 200 cm x 60 cm
    drop: 40 cm
  - bed-skirt: Bed
    cloth: slub
    bed: 150 cm x 200 cm x 60 cm
    drop: 35 cm
  - runner: Foot
    cloth: slub
    bed: 150 cm x 200 cm x 60 cm
    drop: 30 cm
    depth: 60 cm
  - throw: Over the arm
    cloth: slub
    size: 130 cm x 170 cm
    at: bay
  - tablecloth: Round
    cloth: slub
    table: 100 cm x 100 cm x 74 cm
    drop: 30 cm
  - table-skirt: Side
    cloth: slub
    table: 60 cm x 60 cm x 70 cm
  - wallpaper: North
    cloth: paper
    on: north
  - panelled-wall: West
    at: { wall: west }
    cloth: slub
    size: 400 cm x 260 cm
    panels: 3
    margin: 10 cm
    moulding: 3 cm
  - paint: Rest
    colour: "#e6ddc8"
    on: [east, south]
  - object: stove
    at: { wall: west }
`;
const FILES = {
  "studio.md": `studio: Test
language: en-GB
units: centimetres
currency: EUR
paper: a3`,
  "cloths/leaf.md": `cloth: Leaf
width: 140 cm
kind: large-print
colours: [{ colour: "#44553a", share: 60 % }, { colour: "#e8dfc6", share: 40 % }]
repeat: { up: 64 cm, across: 70 cm, match: half-drop }
price: { trade: 40.00, per: metre }`,
  "cloths/slub.md": `cloth: Slub
width: 140 cm
kind: plain
colours: [{ colour: "#c9b48a" }]
price: { trade: 22.00, per: metre }`,
  "cloths/paper.md": `cloth: Paper
type: wallcovering
kind: small-print
colours: [{ colour: "#dfe4d4" }]
roll: { width: 53 cm, length: 10 m }
repeat: { up: 53 cm, across: 53 cm, match: straight }
price: { trade: 55.00, per: roll }`,
  "objects/stove.md": `object: Stove
shape: stove
size: 60 cm x 40 cm x 150 cm
colours: [{ colour: "#7a2f22" }]`,
  "projects/all/project.md": `project: All
client: { name: Nobody }
status: proposed`,
  "projects/all/room.md": `room: Room
height: 260 cm
walls:
  - { wall: north, length: 420 cm, windows: [{ window: bay, from-left: 90 cm, size: 160 cm x 150 cm, sill: 60 cm }] }
  - { wall: east, length: 400 cm, windows: [{ window: small, from-left: 150 cm, size: 90 cm x 110 cm, sill: 95 cm }] }
  - { wall: south, length: 420 cm, doors: [{ door: hall, from-left: 30 cm, size: 85 cm x 205 cm }] }
  - { wall: west, length: 400 cm }
cloths: [leaf, slub]
anchor: stove
items:${ITEMS}`,
};

test("a room with an item of every kind makes all its documents", async () => {
  for (const { kind } of ITEM_KINDS) expect(ITEMS).toContain(`\n  - ${kind}:`);
  const computed = await computedFolder(FILES);
  expect(saidOf(computed)).toEqual([]);
  expect(computed.pages.length).toBeGreaterThan(10);
  const layouts = openLayouts(resolve("layouts"));
  for (const page of computed.pages) {
    const made = layouts.render(page, "");
    expect(made, page.path).toHaveProperty("html");
    const { html } = made as { html: string };
    const seen = html.replace(/<(style|script)[\s\S]*?<\/\1>/g, "");
    expect(seen, page.path).not.toMatch(/\b(NaN|undefined|Infinity)\b|\[object/);
  }
});
