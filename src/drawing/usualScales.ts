import type { UnitSystem } from "../units/printLength.ts";

/** One to so much: the usual scales of drawings of a room, the largest first, for which there are rules to read them by (from memory). */
export const USUAL_SCALES: Readonly<Record<UnitSystem, readonly number[]>> = {
  inches: [12, 16, 20, 24, 32, 48, 64, 96, 192],
  centimetres: [10, 15, 20, 25, 30, 50, 75, 100, 200],
};
