import { expect, test } from "vitest";
import type { Computed } from "../../src/site/computed.ts";
import { computedFolder } from "./smallFolder.ts";

// The cards that go out with her, from files. Sums and places by hand; the scenario is made up.

interface Card {
  readonly room: string;
  readonly inHand: string;
  readonly colours: readonly { hex: string; name: string; places: string }[];
  readonly cuttings: readonly { name: string }[];
  readonly lacks: readonly { html: string }[];
  readonly open: readonly string[];
  readonly measures: readonly { what: string; size: { html: string } }[];
}

const FILES = (more = "", language = "en-US") => ({
  "studio.md": `studio: Alder Lane Rooms
language: ${language}
units: inches
currency: USD
paper: tabloid
makers: { bench: { name: Bench, makes: [cushion], rates: { cushion: 30 per item } } }`,
  "cloths/linen.md": `cloth: Linen
width: 54"
kind: plain
colours: [{ colour: "#8a2a26" }]
price: { trade: 10, client: 20, per: yard }`,
  "projects/quay/project.md":
    "project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20",
  "projects/quay/den.md": `room: den
height: 8' 9"
floor: 16' 6" x 12' 4"
walls:
  - wall: north
    length: 16' 6"
    windows: [{ window: bay, from-left: 4', size: 72" x 60", sill: 30" }]
    doors: [{ door: hall, from-left: 12', size: 32" x 80" }]
budget: 100
colours: [{ colour: "#8a2a26", name: brick }]
cloths: [linen]
items:
  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: knife
    maker: bench
${more}`,
});

function cards(computed: Computed): readonly Card[] {
  const page = computed.pages.find(({ path }) => path === "studio/quay/pocket.html");
  if (!page) throw new Error("no pocket cards");
  expect(page).toMatchObject({ reader: "studio", pdf: true });
  return (page.model as unknown as { cards: Card[] }).cards;
}

test("a card has its room's colours and cloths, what is left to spend, and what a find has to fit", async () => {
  const [card] = cards(await computedFolder(FILES()));
  // A cushion: 30 of making, and two faces of 21 in beside each other, a quarter yard up: 3/4 yd at 20.
  expect(card?.inHand).toBe("$55.00 in hand of $100");
  expect(card?.colours).toEqual([{ hex: "#8a2a26", name: "Brick", places: "1 place" }]);
  expect(card?.cuttings.map(({ name }) => name)).toEqual(["Linen"]);
  const plain = (html: string) => html.replace(/<[^>]*>/g, "").replace(/\s/g, " ");
  expect(card?.measures.map(({ what, size }) => `${what} ${plain(size.html)}`)).toEqual([
    "Floor 16′ 6″ × 12′ 4″",
    "Height 8′ 9″",
    "Window bay 72″ × 60″",
    "Door hall 32″ × 80″",
  ]);
  // One place is not carried: that is what it lacks.
  expect(card?.lacks.map(({ html }) => html).join()).toContain("Brick is seen once, on Seat");
});

test("what she has overruled is no longer looked for; what has no price is", async () => {
  const more = `  - cushion: Back
    cloth: linen
    size: 20" x 20"
    edge: knife
    maker: bench
    hardware: [{ what: Brass ring }]
accept:
  - { finding: colour-once, of: ["#8a2a26"], because: It is an accent. }`;
  const [card] = cards(await computedFolder(FILES(more)));
  expect(card?.lacks.map(({ html }) => html).join()).not.toContain("Brick");
  expect(card?.open).toEqual(["Pillow, back: Brass ring"]);
});
