declare module "color-diff" {
  /** CIEDE2000 between two CIE L*a*b* values. */
  export function diff(
    one: { L: number; a: number; b: number },
    other: { L: number; a: number; b: number },
  ): number;
}
