// Every `--json` document has the keys that others may build on (jsonShapes.ts), on the demo. The text is what the program writes; once it is started as she starts it.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { z } from "zod";
import { main } from "../../src/cli/main.ts";
import { WIRING } from "../../src/cli/start.ts";
import { check, fits, match, money, quantities, swatch } from "./jsonShapes.ts";

const ROOT = join(import.meta.dirname, "../..");
const PROGRAM = join(ROOT, "src/cli/roomcloth.mjs");

const PHOTO = "content/cloths/pomander.jpg";
const CASES: readonly (readonly [string, readonly string[], z.ZodType])[] = [
  ["swatch, a half-drop", ["swatch", PHOTO, "--shows", "30in"], swatch],
  ["swatch, a stripe", ["swatch", "content/cloths/deckhouse.jpg", "--shows", "12in"], swatch],
  ["match", ["match", PHOTO], match],
  ["fits", ["fits", "pomander", "--length", "60in"], fits],
  ["quantities of a project", ["quantities", "gannet-house"], quantities],
  ["quantities of a room", ["quantities", "gannet-house/study"], quantities],
  ["money of a project", ["money", "gannet-house"], money],
  ["money of a room", ["money", "gannet-house/study"], money],
  ["check", ["check"], check],
];

const said = new Map<string, Promise<unknown>>();

/** What the program writes on standard output, which must be one JSON document and nothing else; run once a command line. */
function jsonOf(args: readonly string[]): Promise<unknown> {
  const key = args.join(" ");
  const before = said.get(key);
  if (before) return before;
  const now = args[0] === "check" ? started(args) : written(args);
  said.set(key, now);
  return now;
}

/** The same by its verbs in this process: a start takes longer than most of them do. */
async function written(args: readonly string[]): Promise<unknown> {
  let text = "";
  await main([...args, "--content", join(ROOT, "content"), "--json"], WIRING, {
    out: { write: (more) => (text += more) },
    err: { write: () => true, isTTY: false },
    env: process.env,
    ended: new Promise(() => {}),
  });
  return JSON.parse(text);
}

async function started(args: readonly string[]): Promise<unknown> {
  const { stdout } = spawnSync(process.execPath, [PROGRAM, ...args, "--json"], {
    cwd: ROOT,
    encoding: "utf8",
  });
  return JSON.parse(stdout);
}

/** Every value below a key that ends in Mm, with its path. */
function* millimetres(value: unknown, path = ""): Generator<readonly [string, unknown]> {
  if (value === null || typeof value !== "object") return;
  for (const [key, inner] of Object.entries(value)) {
    if (key.endsWith("Mm")) yield [`${path}/${key}`, inner];
    else yield* millimetres(inner, `${path}/${key}`);
  }
}

const isLength = (value: unknown): boolean =>
  value === null ||
  (typeof value === "number" && Number.isFinite(value)) ||
  (Array.isArray(value) && value.every(isLength));

describe.each(CASES)("%s --json", (_name, args, shape) => {
  test("has the keys that stay, and lengths in millimetres are numbers", async () => {
    const json = await jsonOf(args);
    expect(
      shape
        .safeParse(json)
        .error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`),
    ).toBeUndefined();
    const wrong = [...millimetres(json)].filter(([, value]) => !isLength(value));
    expect(wrong).toEqual([]);
  });
});

test("a half-drop's lattice is (horizontal, half of vertical) and (0, vertical), in the picture's axes", async () => {
  const { pattern } = swatch.parse(await jsonOf(["swatch", PHOTO, "--shows", "30in"]));
  const repeat = pattern.repeat as NonNullable<typeof pattern.repeat>;
  expect(repeat.match).toBe("half-drop");
  const across = repeat.horizontalMm as number;
  const up = repeat.verticalMm as number;
  const [first, second] = repeat.lattice as [[number, number], [number, number]];
  // The two shortest vectors of the lattice, whose cell is that of one column's step and one repeat.
  const area = Math.abs(first[0] * second[1] - first[1] * second[0]);
  expect(Math.abs(area / (across * up) - 1)).toBeLessThan(0.02);
  for (const [x, y] of [first, second]) {
    const steps = Math.round(x / across);
    expect(Math.abs(x - steps * across)).toBeLessThan(0.02 * across);
    const rest = y / up - steps / 2;
    expect(Math.abs(rest - Math.round(rest))).toBeLessThan(0.02);
  }
});

test("every piece of a plan stands in its register, modulo the repeat, on a length that is there", async () => {
  const { cloths } = quantities.parse(await jsonOf(["quantities", "gannet-house"]));
  let registered = 0;
  for (const { plan: cut } of cloths) {
    for (const piece of cut.pieces) {
      expect(piece.length).toBeLessThan(cut.lengths.length);
      const { pattern } = cut;
      if (piece.register === null || pattern === null) continue;
      const off = (at: number, want: number, repeat: number): number => {
        const rest = (at - want) / repeat;
        return Math.abs(rest - Math.round(rest)) * repeat;
      };
      const { xMm, yMm } = piece.register;
      if (xMm !== null && pattern.horizontalMm !== null && pattern.match === "straight") {
        expect(off(piece.xMm, xMm, pattern.horizontalMm), piece.piece).toBeLessThan(0.02);
      }
      if (yMm !== null && pattern.match === "straight") {
        expect(off(piece.yMm, yMm, pattern.verticalMm), piece.piece).toBeLessThan(0.02);
        registered++;
      }
    }
  }
  expect(registered).toBeGreaterThan(3);
});
