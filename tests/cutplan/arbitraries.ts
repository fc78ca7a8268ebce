import fc from "fast-check";
import type { AcrossRule, AlongRule, CutPiece } from "../../src/cutplan/piece.ts";
import type { PlanInput } from "../../src/cutplan/plan.ts";

/** Any room at all: odd sizes, every rule, repeats of every proportion. Pieces that no cloth could hold are left out. */
export const anyInput: fc.Arbitrary<PlanInput> = fc
  .record({
    usableWidth: fc.integer({ min: 40, max: 300 }),
    horizontal: fc.integer({ min: 10, max: 320 }),
    vertical: fc.integer({ min: 10, max: 200 }),
    match: fc.constantFrom("straight" as const, "half-drop" as const),
    patterned: fc.boolean(),
    kinds: fc.array(
      fc.record({
        width: fc.integer({ min: 1, max: 300 }),
        height: fc.integer({ min: 1, max: 400 }),
        count: fc.integer({ min: 1, max: 4 }),
        across: fc.constantFrom("free" as const, "at" as const, "register" as const),
        along: fc.constantFrom("free" as const, "register" as const),
        x: fc.integer({ min: -400, max: 400 }),
        y: fc.integer({ min: -400, max: 400 }),
        mayTurn: fc.boolean(),
        right: fc.boolean(),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    scale: fc.constantFrom(1, 1, 2, 127, 800),
  })
  .map(({ usableWidth, horizontal, vertical, match, patterned, kinds, scale }) => ({
    usableWidth: usableWidth * scale,
    pattern: patterned
      ? { horizontal: horizontal * scale, vertical: vertical * scale, match }
      : null,
    pieces: kinds.flatMap((kind, k) =>
      Array.from({ length: kind.count }, (_, copy): CutPiece => {
        const width = Math.min(kind.width, usableWidth) * scale;
        const across: AcrossRule =
          kind.across === "at"
            ? { rule: "at", positions: kind.right ? [usableWidth * scale - width] : [0] }
            : kind.across === "register" && patterned
              ? { rule: "register", residue: kind.x * scale }
              : { rule: "free" };
        const along: AlongRule =
          kind.along === "register" && patterned
            ? { rule: "register", residue: kind.y * scale }
            : { rule: "free" };
        return {
          id: `${k}.${copy}`,
          group: `${k}`,
          width,
          height: kind.height * scale,
          mayTurn: kind.mayTurn,
          across,
          along,
        };
      }),
    ),
    options: { builds: 60 },
  }));
