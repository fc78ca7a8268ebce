// The verbs that look at cloth, on the demo's own photographs, whose truth is known from tests/cloths.
import {
  copyFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, expect, test } from "vitest";
import { fits } from "../../src/cli/verbs/fits.ts";
import { remnantOf } from "../../src/cli/verbs/fitsOptions.ts";
import { match } from "../../src/cli/verbs/match.ts";
import { swatch } from "../../src/cli/verbs/swatch.ts";
import { swatchOptions } from "../../src/cli/verbs/swatchOptions.ts";

const CONTENT = join(import.meta.dirname, "../../content");
const photoOf = (name: string) => join(CONTENT, "cloths", name);
const home = mkdtempSync(join(tmpdir(), "roomcloth-verbs-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

interface SwatchJson {
  readonly colours: readonly { readonly hex: string; readonly share: number }[];
  readonly pattern: {
    readonly repeat: object | null;
    readonly kind: string;
    readonly patternToM: number;
    readonly readsPlainFromM: number;
  };
}

test("swatch: the keys that stay, the repeat of the card, shares that sum to one, words for a decorator", async () => {
  const said = await swatch(
    CONTENT,
    photoOf("pomander.jpg"),
    swatchOptions({ shows: "30in" }),
    null,
  );
  expect(said.exit).toBe(0);
  const json = said.json as SwatchJson;
  expect(Object.keys(json)).toEqual(
    expect.arrayContaining(["photo", "showsMm", "colours", "average", "pattern", "confirm"]),
  );
  for (const colour of json.colours)
    expect(Object.keys(colour)).toEqual(["hex", "oklch", "share", "name", "family", "lrv"]);
  expect(json.colours.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 6);
  expect(Object.keys(json.pattern)).toEqual(
    expect.arrayContaining([
      "kind",
      "repeat",
      "motifMm",
      "directionDeg",
      "contrast",
      "busyness",
      "readsPlainFromM",
    ]),
  );
  expect(json.pattern.repeat).toMatchObject({ match: "half-drop", sure: true });
  const { verticalMm, horizontalMm } = json.pattern.repeat as Record<string, number>;
  // The card's own 25 1/4 and 13 1/2 in, which the drawing was made with.
  expect(Math.abs((verticalMm as number) / 641.35 - 1)).toBeLessThan(0.01);
  expect(Math.abs((horizontalMm as number) / 342.9 - 1)).toBeLessThan(0.01);
  expect(said.text).toMatch(/repeat: 25 \d\/\d+[″"] up, 13 \d\/\d+[″"] across, half-drop/);
});

test("swatch: what is a large print is as the studio's own file says; without a studio as usual", async () => {
  const kindIn = async (content: string): Promise<string> => {
    const said = await swatch(
      content,
      photoOf("caraway.jpg"),
      swatchOptions({ shows: "8in" }),
      null,
    );
    return (said.json as SwatchJson).pattern.kind;
  };
  const studio = join(home, "small-prints");
  mkdirSync(studio);
  const head = readFileSync(join(CONTENT, "studio.md"), "utf8").replace(
    /^---\n/,
    "---\nlarge-print: { repeat: 1 in, motif: 1/2 in }\n",
  );
  writeFileSync(join(studio, "studio.md"), head);
  // Its mark is not beside it: told, and the usual limits hold until it is mended.
  const broken = await swatch(
    studio,
    photoOf("caraway.jpg"),
    swatchOptions({ shows: "8in" }),
    null,
  );
  expect(broken).toMatchObject({ exit: 0, json: { pattern: { kind: "small-print" } } });
  expect(broken.diagnostics).toMatchObject([{ severity: "warning", file: "studio.md" }]);
  copyFileSync(join(CONTENT, "mark.png"), join(studio, "mark.png"));
  expect(await kindIn(CONTENT)).toBe("small-print");
  expect(await kindIn(join(home, "nowhere"))).toBe("small-print");
  expect(await kindIn(studio)).toBe("large-print");
});

test("swatch: by an eye half as sharp a pattern is lost half as far away", async () => {
  const studio = join(home, "weak-eyes");
  mkdirSync(studio);
  copyFileSync(join(CONTENT, "mark.png"), join(studio, "mark.png"));
  const seenBy = async (acuity: string): Promise<SwatchJson["pattern"]> => {
    const head = readFileSync(join(CONTENT, "studio.md"), "utf8");
    writeFileSync(join(studio, "studio.md"), head.replace(/^---\n/, `---\nacuity: ${acuity}\n`));
    const options = swatchOptions({ shows: "4in" });
    const said = await swatch(studio, photoOf("turnstile.jpg"), options, null);
    expect(said.diagnostics).toEqual([]);
    return (said.json as SwatchJson).pattern;
  };
  const [good, weak] = [await seenBy("1"), await seenBy("20/40")];
  // As far as the sine of a small angle is the angle.
  expect(weak.patternToM / good.patternToM).toBeCloseTo(0.5, 3);
  expect(weak.readsPlainFromM / good.readsPlainFromM).toBeCloseTo(0.5, 3);
});

test("swatch --draw: a picture that a viewer opens, with the photograph in it", async () => {
  const out = join(home, "plate.png");
  const said = await swatch(
    CONTENT,
    photoOf("deckhouse.jpg"),
    swatchOptions({ shows: "12in" }),
    out,
  );
  expect(said.text).toContain(`Drawn in ${out}.`);
  const { width, height, format } = await sharp(out).metadata();
  expect(format).toBe("png");
  expect(width).toBeGreaterThan(900);
  expect(height).toBeGreaterThan(900);
});

test("what cannot be read or measured is told in words, with the right exit status", async () => {
  const text = join(home, "words.jpg");
  writeFileSync(text, "no picture");
  const broken = await swatch(CONTENT, text, swatchOptions({ shows: "12in" }), null);
  expect(broken).toMatchObject({ exit: 1, text: "" });
  expect(broken.diagnostics[0]?.message).toBeTruthy();
  const missing = await swatch(
    CONTENT,
    join(home, "none.jpg"),
    swatchOptions({ shows: "12in" }),
    null,
  );
  expect(missing.exit).toBe(1);
  const outside = await swatch(
    CONTENT,
    photoOf("deckhouse.jpg"),
    swatchOptions({ shows: "12in", crop: "9000,9000,200,200" }),
    null,
  );
  expect(outside.exit).toBe(2);
  expect(outside.diagnostics[0]).toMatchObject({ code: "crop-outside" });
  for (const typed of [
    {},
    { shows: "twelve" },
    { shows: "12in", colours: "99" },
    { shows: "12in", neutral: "1,2,3,4" },
    { corners: ["1,2", "3,4", "5,6"] },
  ])
    expect(() => swatchOptions(typed), JSON.stringify(typed)).toThrow(/--/);
});

interface MatchJson {
  readonly nearest: readonly {
    readonly cloth: string;
    readonly distance: number;
    readonly remnant: unknown;
    readonly why: string;
  }[];
}

test("match: colours are named in the spelling of the studio", async () => {
  const textIn = async (language: string): Promise<string> => {
    const studio = join(home, `match-${language}`);
    mkdirSync(join(studio, "cloths"), { recursive: true });
    writeFileSync(
      join(studio, "studio.md"),
      `---\nstudio: Larch\nlanguage: ${language}\nunits: cm\ncurrency: EUR\npaper: a3\n---\n`,
    );
    cpSync(photoOf("pomander.jpg"), join(studio, "cloths/leaf.jpg"));
    writeFileSync(
      join(studio, "cloths/leaf.md"),
      "---\ncloth: Leaf\nphoto: { file: leaf.jpg, shows: 76 cm }\nwidth: 137 cm\n---\n",
    );
    const options = swatchOptions({ shows: "76cm" });
    return (await match(studio, photoOf("pomander.jpg"), options, false)).text;
  };
  expect(await textIn("en-GB")).toMatch(/greyish (?!.*gray)/);
  expect(await textIn("en-US")).toMatch(/grayish (?!.*grey)/);
});

test("match: a cloth's own photograph finds its card first, at nothing; the rest follow by distance", async () => {
  const said = await match(CONTENT, photoOf("lovage.jpg"), swatchOptions({ shows: "1 m" }), false);
  const { nearest } = said.json as MatchJson;
  expect(nearest[0]).toMatchObject({ cloth: "lovage" });
  expect(nearest[0]?.distance).toBeLessThan(0.5);
  expect(nearest.length).toBeGreaterThan(10);
  // Remnants in hand stand before other cloths only where they are as near.
  for (const { why } of nearest) expect(why).not.toBe("");
  const unowned = nearest.filter((each) => each.remnant === null).map((each) => each.distance);
  expect(unowned).toEqual([...unowned].sort((a, b) => a - b));
});

interface FitsJson {
  readonly makes: readonly {
    readonly items: readonly string[];
    readonly neededMm: number;
    readonly plan: {
      readonly pieces: readonly {
        readonly xMm: number;
        readonly yMm: number;
        readonly widthMm: number;
        readonly heightMm: number;
        readonly length: number;
      }[];
    };
  }[];
  readonly nearestMiss: { readonly missingMm: number } | null;
}

test("fits: no piece over another, past an end, or on a hole or a seam; the nearest miss is named", async () => {
  const typed = { length: "96in", pieces: "2", seam: ["20in"], hole: ["30in, 40in, 3in x 2in"] };
  const said = await fits(CONTENT, "chaff", remnantOf(typed));
  expect(said.exit).toBe(0);
  const { makes, nearestMiss } = said.json as FitsJson;
  expect(makes.length).toBeGreaterThan(3);
  const [seam, hole] = [20 * 25.4, { x: 30 * 25.4, y: 40 * 25.4, w: 3 * 25.4, h: 2 * 25.4 }];
  for (const { plan, neededMm } of makes) {
    expect(neededMm).toBeLessThanOrEqual(96 * 25.4);
    plan.pieces.forEach((a, at) => {
      expect(a.yMm + a.heightMm).toBeLessThanOrEqual(96 * 25.4 + 0.01);
      expect(a.xMm + a.widthMm <= seam - 20 + 0.02 || a.xMm >= seam + 20 - 0.02).toBe(true);
      const clear =
        a.xMm + a.widthMm <= hole.x + 0.02 ||
        a.xMm >= hole.x + hole.w - 0.02 ||
        a.yMm + a.heightMm <= hole.y + 0.02 ||
        a.yMm >= hole.y + hole.h - 0.02;
      expect(clear).toBe(true);
      for (const b of plan.pieces.slice(at + 1)) {
        if (b.length !== a.length) continue;
        expect(
          a.xMm + a.widthMm <= b.xMm + 0.02 ||
            b.xMm + b.widthMm <= a.xMm + 0.02 ||
            a.yMm + a.heightMm <= b.yMm + 0.02 ||
            b.yMm + b.heightMm <= a.yMm + 0.02,
        ).toBe(true);
      }
    });
  }
  expect(said.text).toContain("Kept clear of: ");
  const small = await fits(CONTENT, "chaff", remnantOf({ length: "20in" }));
  const miss = (small.json as FitsJson).nearestMiss;
  expect(miss?.missingMm).toBeGreaterThan(0);
  expect(small.text).toMatch(/Nearest to fitting: .* too short/);
  expect(nearestMiss === null || nearestMiss.missingMm > 0).toBe(true);
});

test("fits: what is typed wrongly is told with an example", () => {
  for (const typed of [
    {},
    { length: "0" },
    { length: "3" },
    { length: "900 m" },
    { length: "3yd", pieces: "0" },
    { length: "3yd", hole: ["here"] },
    { length: "3yd", hole: ["1in, 999in, 2in x 2in"] },
    { length: "3yd", width: "30in", seam: ["40in"] },
  ])
    expect(() => remnantOf(typed), JSON.stringify(typed)).toThrow();
});
