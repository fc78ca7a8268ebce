import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { compute } from "../../src/site/compute.ts";
import { sendStudio } from "./sendStudio.ts";

// What is made otherwise since a revision that was sent, as its client and its makers read it. The scenario is made up.

const { home, put, project, room, cushion, card, send, changes } = sendStudio();

test("what is made otherwise is told with what it was, in the studio's words, and no maker or price of the studio's", async () => {
  const lined = (more: string) => `${cushion("Seat", "linen").trimEnd()}\n${more}`;
  await room(lined("    count: 4\n    motif: centred\n    making: 30\n    note: For the bench\n"));
  await send();
  const kept = await readFile(join(home(), "projects/quay/sent/A.json"), "utf8");
  expect(kept).not.toMatch(/making|note|For the bench|maker/);
  await project("revision: B");
  await room(
    lined("    count: 5\n    motif: as-it-falls\n    making: 30\n    note: Other words\n"),
  );
  const rows = async () => (await changes())?.rows.map(({ how }) => how.html);
  expect(await rows()).toEqual(["5 of them, before 4; motif as it falls, before centered"]);
  // A record of before this was kept tells the price alone, and says what that means.
  const file = "projects/quay/sent/A.json";
  await rm(join(home(), file));
  const old = JSON.parse(kept);
  for (const each of old.items) delete each.made;
  await put(file, JSON.stringify(old));
  expect(await rows()).toEqual([""]);
  expect((await changes())?.sentence).toContain("the price alone is another");
});

test("a welt, a piece, a place, a lining and what comes ready are told with what they were; no price, no supplier", async () => {
  await put(
    "studio.md",
    (await readFile(join(home(), "studio.md"), "utf8")).replace(
      "makers: { bench: { name: Bench, makes: [cushion]",
      "suppliers: { saltings: { name: Saltings } }\nmakers: { bench: { name: Bench, makes: [cushion, ottoman]",
    ),
  );
  const made = (edge: string, at: string, pole: string, front: string) => `  - cushion: Seat
    cloth: linen
    size: 20" x 20"
    edge: ${edge}
    at: ${at}
    maker: bench
    private: velvet
    hardware: [{ what: ${pole}, supplier: saltings, trade: 12.34 }]
  - ottoman: Long
    cloth: linen
    size: 40" x 20" x 16"
    making: 90
    pieces:
      - { piece: top, size: 40" x 20" }
      - { piece: front, size: ${front}, join: both-sides }
      - { piece: front, size: 40" x 15" }
`;
  await room(made("{ welt: linen, cut: bias }", `{ floor: 3' x 4' }`, "feather pad", `40" x 15"`));
  expect(await send()).toMatchObject({ exit: 0 });
  const kept = await readFile(join(home(), "projects/quay/sent/A.json"), "utf8");
  expect(kept).toContain("with feather pad");
  // Though a cloth is called as what the studio wrote for itself.
  expect(kept).not.toMatch(/saltings|1234|12\.34|bench|velvet|private|maker/i);
  await project("revision: B");
  expect((await changes())?.rows).toEqual([]);
  await room(made("knife", "{ on: ottoman-long }", "fibre pad", `40" x 14 1/2"`));
  const rows = async () => (await changes())?.rows.map(({ what, how }) => [what, how.html]);
  expect(await rows()).toEqual([
    [
      "Pillow, seat",
      "edge knife, before welt Linen, cut bias; on the ottoman (long), before 3′ from the west wall, 4′ from the north wall; with fiber pad, before with feather pad",
    ],
    [
      "Ottoman, long",
      expect.stringMatching(
        /^front 40″ × 14.*, join both sides, before 40″ × 15″, join both sides$/,
      ),
    ],
  ]);
  // Of a record of before this was kept nothing is told that may have stood there all along.
  const file = "projects/quay/sent/A.json";
  await rm(join(home(), file));
  const old = JSON.parse(kept);
  for (const each of old.items) delete each.parts;
  await put(file, JSON.stringify(old));
  await room(made("{ welt: linen, cut: bias }", `{ floor: 5' x 4' }`, "fibre pad", `40" x 15"`));
  expect(await rows()).toEqual([]);
});

test("a maker's sheet says what of its items is another since the last revision, and what is no longer to be made; of prices nothing", async () => {
  await room(cushion("Seat", "linen") + cushion("Back", "linen") + cushion("Stool", "linen"));
  expect(await send()).toMatchObject({ exit: 0 });
  await project("revision: B");
  interface Told {
    readonly gone: string;
    readonly blocks: readonly { readonly item: { heading: string; since: string } | null }[];
  }
  const sheet = async () => {
    const { pages } = await compute(home(), { only: null, useCache: false });
    const model = pages.find((p) => p.path === "makers/bench/quay/den.html")?.model as unknown as
      | Told
      | undefined;
    const items = (model?.blocks ?? []).flatMap(({ item }) => item ?? []);
    return { since: items.map((each) => `${each.heading}: ${each.since}`), gone: model?.gone };
  };
  expect(await sheet()).toEqual({
    since: ["Pillow: Seat: ", "Pillow: Back: ", "Pillow: Stool: "],
    gone: "",
  });
  await put("cloths/linen.md", card("Linen", 12));
  await room(
    cushion("Seat", "linen").replace('20" x 20"', '20" x 18"') +
      cushion("Back", "linen") +
      cushion("Rug", "velvet"),
  );
  const { since, gone } = await sheet();
  expect(since[0]?.replace(/\s/g, " ")).toBe(
    "Pillow: Seat: Changed since revision A: size 20″ × 18″, before 20″ × 20″.",
  );
  expect(since.slice(1)).toEqual(["Pillow: Back: ", "Pillow: Rug: New since revision A."]);
  expect(gone).toBe("No longer in this room since revision A: pillow, stool. Do not make it.");
  // Where two could have been asked to make it, neither reads of what may have been the other's.
  await put(
    "studio.md",
    (await readFile(join(home(), "studio.md"), "utf8")).replace(
      "makers: {",
      "makers: { other: { name: Other, makes: [cushion] },",
    ),
  );
  expect((await sheet()).gone).toBe("");
});

test("when a piece was ordered and came is no change that a client reads", async () => {
  await put(
    "objects/lamp.md",
    `---\nobject: Lamp\nshape: lamp\nsize: 12" x 12" x 24"\nprice: { trade: 90 }\n---\n`,
  );
  const items = (pole: string, lamp: string) =>
    `  - cushion: Seat\n    cloth: linen\n    size: 20" x 20"\n    hardware: [{ what: pad, trade: 9${pole} }]\n  - object: lamp\n    at: { floor: 3' x 4' }\n${lamp}`;
  await room(items("", ""));
  expect(await send()).toMatchObject({ exit: 0 });
  await project("revision: B");
  await room(
    items(
      ", ordered: 2026-11-02, arrived: 2026-11-09",
      "    ordered: 2026-11-02\n    arrived: 2026-11-09\n",
    ),
  );
  expect((await changes())?.rows).toEqual([]);
});
