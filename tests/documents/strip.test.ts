import fc from "fast-check";
import { expect, test } from "vitest";
import { shareStrip } from "../../src/documents/board/strip.ts";
import type { RoomScheme } from "../../src/scheme/roomScheme.ts";

const scheme = (parts: readonly number[]): RoomScheme =>
  ({
    shares: parts.map((hundredths, at) => ({
      hex: "#888888",
      name: at % 3 === 1 ? `moderate yellowish brown ${at}` : `c${at}`,
      hundredths,
      areaMm2: hundredths,
      palette: null,
    })),
  }) as unknown as RoomScheme;

const hundreds = fc
  .array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 })
  .map((raw) => {
    const sum = raw.reduce((a, b) => a + b, 0);
    const parts = raw.map((n) => Math.max(1, Math.floor((n / sum) * 100)));
    parts[0] = (parts[0] as number) + 100 - parts.reduce((a, b) => a + b, 0);
    return parts.sort((a, b) => b - a);
  });

test("every part of the strip has its true height, and labels never overlap or leave the page", () => {
  fc.assert(
    fc.property(hundreds, (parts) => {
      const strip = shareStrip(scheme(parts), 279.4, 27, 260);
      const last = strip.at(-1);
      expect((last?.y ?? 0) + (last?.height ?? 0)).toBeCloseTo(279.4, 6);
      for (const [at, part] of strip.entries()) {
        expect(part.height).toBeCloseTo((279.4 * part.hundredths) / 100, 6);
        expect(part.labelY).toBeLessThanOrEqual(260 - 5);
        // A hair line joins a label to a part that it does not stand beside, and only then.
        const beside = part.labelY + 2 >= part.y && part.labelY + 2 <= part.y + part.height;
        expect(part.led).toBe(!beside);
        const next = strip[at + 1];
        if (next)
          expect(next.labelY - part.labelY).toBeGreaterThanOrEqual((at % 3 === 1 ? 9 : 5) - 1e-6);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});
