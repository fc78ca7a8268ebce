// The keys of every `--json` document that others may build on, on the demo.
// What is asked here stays; more keys are welcome. The text is what the program writes; once it is started as she starts it.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { main } from "../../src/cli/main.ts";
import { WIRING } from "../../src/cli/start.ts";

const ROOT = join(import.meta.dirname, "../..");
const PROGRAM = join(ROOT, "src/cli/roomcloth.mjs");

const number = z.number();
const text = z.string();
const mm = z.number().nonnegative();
/** Money is whole minor units: cents. */
const cents = z.int();
const hex = z.string().regex(/^#[0-9a-f]{6}$/);
const level = z.enum(["works", "worth-a-look", "problem"]);

const swatch = z.object({
  photo: text,
  showsMm: mm,
  colours: z
    .array(
      z.object({
        hex,
        oklch: z.tuple([number, number, number]),
        share: z.number().min(0).max(1),
        name: text.min(1),
        family: text.min(1),
        lrv: z.number().min(0).max(100),
      }),
    )
    .min(1),
  average: hex,
  pattern: z.object({
    kind: z.enum([
      "plain",
      "textured-plain",
      "stripe",
      "check",
      "geometric",
      "small-print",
      "large-print",
      "irregular",
    ]),
    repeat: z
      .object({
        verticalMm: mm.nullable(),
        horizontalMm: mm.nullable(),
        match: z.enum(["straight", "half-drop", "other"]),
        lattice: z
          .array(z.tuple([number, number]))
          .min(1)
          .max(2),
        confidence: z.number().min(0).max(1),
        sure: z.boolean(),
      })
      .nullable(),
    motifMm: mm.nullable(),
    directionDeg: z.number().min(0).max(180).nullable(),
    bands: z
      .array(
        z.object({
          directionDeg: z.number().min(0).max(180),
          bands: z.array(z.object({ hex: text, widthMm: mm })).min(2),
        }),
      )
      .max(2),
    runs: z.enum(["one-way", "two-way"]).nullable(),
    contrast: number,
    busyness: number,
    readsPlainFromM: mm.nullable(),
  }),
  confirm: z.array(z.object({ what: text, why: text })),
});

const plan = z.object({
  lengthMm: mm,
  lowerBoundMm: mm,
  startMm: mm,
  forCutting: z.boolean(),
  pattern: z
    .object({
      horizontalMm: mm.nullable(),
      verticalMm: mm,
      // "free": stripes, which match across and run on along the length.
      match: z.enum(["straight", "half-drop", "other", "free"]),
    })
    .nullable(),
  lengths: z.array(mm).min(1),
  pieces: z
    .array(
      z.object({
        room: text,
        item: text,
        piece: text,
        xMm: mm,
        yMm: mm,
        widthMm: mm,
        heightMm: mm,
        turned: z.boolean(),
        mayTurn: z.boolean(),
        register: z.object({ xMm: mm.nullable(), yMm: mm.nullable() }).nullable(),
        length: z.int().nonnegative(),
      }),
    )
    .min(1),
});
const buy = z.object({ amount: number, unit: text, text });

const quantities = z.object({
  project: text,
  cloths: z
    .array(
      z.object({
        cloth: text,
        maker: text.nullable(),
        lot: text.nullable(),
        usableWidthMm: mm,
        plan,
        spareMm: mm,
        buy,
        handbookMm: mm.nullable(),
        defaultsUsed: z.array(z.unknown()),
      }),
    )
    .min(1),
  materials: z.array(z.object({ item: text, what: text, buy })),
  trims: z.array(
    z.object({
      cloth: text,
      needMm: mm,
      buy,
      uses: z.array(z.object({ room: text, item: text, lengthMm: mm })).min(1),
    }),
  ),
  items: z
    .array(
      z.object({ room: text, item: text, kind: text, figures: z.record(z.string(), z.unknown()) }),
    )
    .min(1),
});

const money = z.object({
  project: text,
  currency: z.string().length(3),
  lines: z
    .array(
      z.object({
        room: text.nullable(),
        item: text.nullable(),
        what: text,
        phase: z.int().nullable(),
        trade: cents,
        client: cents,
        tax: cents,
      }),
    )
    .min(1),
  totals: z.object({ trade: cents, client: cents, tax: cents, budget: cents, remaining: cents }),
  instalments: z.array(z.unknown()),
  phases: z.array(z.unknown()),
});

const fits = z.object({
  cloth: text,
  lengthMm: mm,
  widthMm: mm,
  makes: z.array(z.object({ room: text, items: z.array(text).min(1), plan })),
  nearestMiss: z.object({ missingMm: mm, items: z.array(text).min(1) }).nullable(),
});

const match = z.object({
  photo: text,
  nearest: z
    .array(z.object({ cloth: text, distance: mm, remnant: z.unknown(), why: text.min(1) }))
    .min(2),
});

const check = z.object({
  diagnostics: z.array(
    z.object({
      code: text,
      severity: z.enum(["error", "warning"]),
      message: text,
      file: text,
      line: z.int().nullable(),
      column: z.int().nullable(),
      keyPath: z.unknown(),
      actual: z.unknown(),
      expected: z.unknown(),
      hint: z.unknown(),
    }),
  ),
  findings: z
    .array(
      z
        .object({
          room: text,
          code: text,
          level,
          message: text,
          reason: text,
          evidence: z.record(z.string(), z.unknown()),
          accepted: text.nullable(),
          pasteLine: text.nullable(),
        })
        // What works needs no reason of hers; all else can be accepted with one.
        .refine((one) => (one.level === "works") === (one.pasteLine === null)),
    )
    .min(1),
});

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
