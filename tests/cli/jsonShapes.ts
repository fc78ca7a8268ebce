import { z } from "zod";

// The keys of every `--json` document that others may build on; what is asked here stays, more keys are welcome. Its words stand
// here once more, so that one that is renamed in the program is missed.

const number = z.number();
const text = z.string();
const mm = z.number().nonnegative();
/** Money is whole minor units: cents. */
const cents = z.int();
const hex = z.string().regex(/^#[0-9a-f]{6}$/);
const level = z.enum(["works", "worth-a-look", "problem"]);

export const swatch = z.object({
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

export const quantities = z.object({
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

export const money = z.object({
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

export const fits = z.object({
  cloth: text,
  lengthMm: mm,
  widthMm: mm,
  makes: z.array(z.object({ room: text, items: z.array(text).min(1), plan })),
  nearestMiss: z.object({ missingMm: mm, items: z.array(text).min(1) }).nullable(),
});

export const match = z.object({
  photo: text,
  nearest: z
    .array(z.object({ cloth: text, distance: mm, remnant: z.unknown(), why: text.min(1) }))
    .min(2),
});

export const check = z.object({
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
