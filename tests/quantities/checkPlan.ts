import { expect } from "vitest";

interface PieceJson {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
  register: { xMm: number | null; yMm: number | null } | null;
  length: number;
}

export interface ClothJson {
  cloth: string;
  maker: string | null;
  lot: string | null;
  usableWidthMm: number;
  plan: {
    lengthMm: number;
    lowerBoundMm: number;
    forCutting: boolean;
    notForCutting: string[];
    pattern: {
      horizontalMm: number | null;
      verticalMm: number;
      match: string;
      fromSelvedgeMm: number;
    } | null;
    lengths: number[];
    pieces: PieceJson[];
  };
  spareMm: number;
  buy: { amount: number; unit: string; text: string; lengthMm: number };
  handbookMm: number | null;
  handbook: string | null;
  defaultsUsed: { item: string | null; what: string; value: string; source: string }[];
}

const EPS = 1e-6;

/** Looks at a cloth's plan as a cutter would: on the cloth, nothing overlaps, all in register, bound and length in order. */
export function checkPlan(cloth: ClothJson): void {
  const { plan } = cloth;
  expect(plan.lowerBoundMm).toBeLessThanOrEqual(plan.lengthMm + EPS);
  expect(plan.lengths.reduce((a, b) => a + b, 0)).toBeCloseTo(plan.lengthMm, 6);
  expect(cloth.buy.lengthMm).toBeGreaterThanOrEqual(plan.lengthMm + cloth.spareMm - EPS);
  plan.pieces.forEach((one, n) => {
    expect(one.xMm).toBeGreaterThanOrEqual(-EPS);
    expect(one.yMm).toBeGreaterThanOrEqual(-EPS);
    expect(one.xMm + one.widthMm).toBeLessThanOrEqual(cloth.usableWidthMm + EPS);
    expect(one.yMm + one.heightMm).toBeLessThanOrEqual((plan.lengths[one.length] as number) + EPS);
    for (const other of plan.pieces.slice(n + 1)) {
      const apart =
        one.length !== other.length ||
        one.xMm + one.widthMm <= other.xMm + EPS ||
        other.xMm + other.widthMm <= one.xMm + EPS ||
        one.yMm + one.heightMm <= other.yMm + EPS ||
        other.yMm + other.heightMm <= one.yMm + EPS;
      expect(apart, `${JSON.stringify(one)} meets ${JSON.stringify(other)}`).toBe(true);
    }
    if (one.register?.xMm != null)
      isMultiple(one.xMm - one.register.xMm, plan.pattern?.horizontalMm as number);
    if (one.register?.yMm != null)
      isMultiple(one.yMm - one.register.yMm, plan.pattern?.verticalMm as number);
  });
}

/** To within 0.02 mm: repeats that are no whole 1/160 mm are held to the next one. */
function isMultiple(value: number, period: number): void {
  const off = Math.abs(value - Math.round(value / period) * period);
  expect(off).toBeLessThan(0.02);
}
