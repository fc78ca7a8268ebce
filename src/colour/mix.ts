import { hexOfRgb, rgbOfHex } from "./hex.ts";
import { channelOfLinear, linearOfChannel } from "./linear.ts";

/** A colour and how much of it; the amounts need not sum to one. */
export interface Portion {
  readonly hex: string;
  readonly share: number;
}

/**
 * The colour that an area of these colours has from afar: averaged in linear light, as the eye does.
 * Null where there is nothing to average.
 */
export function mix(portions: readonly Portion[]): string | null {
  let total = 0;
  let red = 0;
  let green = 0;
  let blue = 0;
  for (const { hex, share } of portions) {
    const [r, g, b] = rgbOfHex(hex);
    total += share;
    red += share * linearOfChannel(r);
    green += share * linearOfChannel(g);
    blue += share * linearOfChannel(b);
  }
  if (!(total > 0)) return null;
  return hexOfRgb([
    channelOfLinear(red / total),
    channelOfLinear(green / total),
    channelOfLinear(blue / total),
  ]);
}
