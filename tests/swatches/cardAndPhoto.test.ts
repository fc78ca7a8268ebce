// Card and photograph of one cloth, from files: the demo's own pomander, whose drawing repeats at 25 1/4 by 13 1/2 in.
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import type { ClothMeasure } from "../../src/cloth/clothMeasure.ts";
import { NO_CACHE } from "../../src/images/cache.ts";
import { readLibrary, readStudioRecords } from "../../src/site/readLibrary.ts";
import { readSwatches } from "../../src/site/readSwatches.ts";
import { clothFacts } from "../../src/swatches/clothFacts.ts";

const home = mkdtempSync(join(tmpdir(), "roomcloth-cards-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

test("the card's repeat is cut by though the photograph shows another, and both values are kept", async () => {
  mkdirSync(join(home, "cloths"));
  writeFileSync(
    join(home, "studio.md"),
    "---\nstudio: Tests\nlanguage: en-GB\nunits: inches\ncurrency: GBP\n---\n",
  );
  const from = join(import.meta.dirname, "../../content/cloths/pomander.jpg");
  copyFileSync(from, join(home, "cloths/pomander.jpg"));
  const photo = 'photo: { file: pomander.jpg, shows: 30" }';
  const write = (id: string, lines: string) =>
    writeFileSync(
      join(home, `cloths/${id}.md`),
      `---\ncloth: Pomander\n${photo}\nwidth: 54"\n${lines}---\n`,
    );
  write("wrong", 'repeat: { up: 21", across: 13 1/2", match: half-drop }\n');
  write("right", 'repeat: { up: 25 1/4", across: 13 1/2", match: half-drop }\n');
  write("silent", "");
  const { records, swatches } = await readLibrary(home);
  const of = (id: string) => {
    const card = records.cloths.get(id);
    const swatch = swatches.cloths.get(id);
    if (!card || !swatch) throw new Error(`${id} was not read`);
    return { facts: clothFacts(card, swatch), swatch };
  };
  const wrong = of("wrong");
  expect(wrong.facts.repeat?.up.toMm()).toBeCloseTo(533.4, 6);
  expect(wrong.swatch).toMatchObject({ repeatFrom: "declared" });
  const [both] = wrong.swatch.disagreements.filter((each) => each.what === "repeat");
  expect(both?.declared).toMatch(/^21″ up/);
  expect(both?.measured).toMatch(/^25(?:\u202f(?:1\/16|1\/8|3\/16|1\/4|5\/16|3\/8|7\/16))?″ up/);
  expect(of("right").swatch.disagreements).toEqual([]);
  const silent = of("silent");
  expect(silent.swatch.repeatFrom).toBe("measured");
  expect(Math.abs((silent.facts.repeat?.up.toMm() ?? 0) / 641.35 - 1)).toBeLessThan(0.01);
});

test("a photograph without a scale gives no sizes: no repeat, no motif, no bands", async () => {
  const from = join(import.meta.dirname, "../../content/cloths/slipway.webp");
  copyFileSync(from, join(home, "cloths/slipway.webp"));
  const measured = async (photo: string) => {
    const card = `---\ncloth: Slipway\nphoto: ${photo}\n---\n`;
    writeFileSync(join(home, "cloths/ticking.md"), card);
    const records = await readStudioRecords(home);
    const kept: { measure: ClothMeasure }[] = [];
    const writeJson = async (_: string, value: unknown) => {
      kept.push(value as (typeof kept)[number]);
    };
    const cloths = new Map([...records.cloths].filter(([id]) => id === "ticking"));
    await readSwatches(home, { ...records, cloths }, { ...NO_CACHE, writeJson });
    return kept[0]?.measure.pattern;
  };
  const scaled = await measured('{ file: slipway.webp, shows: 7" }');
  expect(scaled?.bands[0]?.bands).toHaveLength(8);
  const bare = await measured("{ file: slipway.webp }");
  expect(bare).toMatchObject({ kind: "stripe", repeat: null, motifMm: null, bands: [] });
});
