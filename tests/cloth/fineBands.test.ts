// Bands that are hardly more than their own width apart on the photograph, such as the ribs of a corduroy.
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { hexOfRgb } from "../../src/colour/hex.ts";
import { type Design, photograph } from "./made.ts";

test.each([3.2, 3.55, 2.9])(
  "ribs of %f mm are told by one rib, not by ten, though pixels fall between their tops",
  (ribMm) => {
    const ribs: Design = (x) => {
      const light = 0.7 + 0.3 * Math.sin((Math.PI * (((x % ribMm) + ribMm) % ribMm)) / ribMm);
      const [r, g, b] = [138, 106, 61].map((v) => Math.round(v * light)) as [
        number,
        number,
        number,
      ];
      return hexOfRgb([r, g, b]);
    };
    const shot = { widthMm: 229, heightMm: 172, widthPx: 640, noise: 3 };
    const place = { file: "card.md", line: 1, column: 1, keyPath: null };
    const pattern = measureCloth(photograph(ribs, shot), 229, { place }).value?.pattern;
    expect(pattern?.kind).toBe("stripe");
    const [across] = pattern?.repeat?.lattice ?? [];
    const mm = Math.hypot(...(across ?? [0, 0]));
    expect(Math.abs(mm / ribMm - 1)).toBeLessThan(0.01);
  },
);
