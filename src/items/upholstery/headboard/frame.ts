import type { HeadboardMade } from "./pieces.ts";

/** The padded board of a headboard, with the rise of its head and what its border takes, millimetres. */
export function frame(made: HeadboardMade) {
  const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
  const inset = made.border?.toMm() ?? 0;
  return { width, depth, height, rise: made.rise.toMm(), inset };
}
