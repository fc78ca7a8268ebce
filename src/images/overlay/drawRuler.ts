import type { UnitSystem } from "../../units/printLength.ts";

/** A ruler's ticks along a side, in pixels from its beginning. */
export interface Ticks {
  readonly at: readonly { readonly px: number; readonly number: number | null }[];
  readonly unit: "in" | "cm";
}

const STEPS = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200];
/** The least room between ticks and between numbers, in pixels. */
const TICK_PX = 12;
const NUMBER_PX = 70;

/** Ticks for `lengthPx` of a picture that shows `mmPerPx`, numbered in whole inches or centimetres where there is room. */
export function rulerTicks(lengthPx: number, mmPerPx: number, units: UnitSystem): Ticks {
  const unitPx = (units === "inches" ? 25.4 : 10) / mmPerPx;
  const step = STEPS.find((s) => s * unitPx >= TICK_PX) ?? 500;
  const numbered = STEPS.find((s) => s * unitPx >= NUMBER_PX && s >= 1) ?? 500;
  const count = Math.floor(lengthPx / (step * unitPx) + 1e-9);
  const at = Array.from({ length: count + 1 }, (_, i) => {
    const value = i * step;
    const whole = Math.abs(value / numbered - Math.round(value / numbered)) < 1e-9;
    return { px: value * unitPx, number: whole ? value : null };
  });
  return { at, unit: units === "inches" ? "in" : "cm" };
}
