/** How well two surfaces are told apart by their light reflectance, in points (0 to 100). */
export type ToldApart = "yes" | "borderline" | "large-areas-only" | "no";

/**
 * BS 8300-2:2018, Annex B: 30 points between adjoining surfaces; 20 are accepted for large areas or in good light. Approved Document M
 * asks for more than 30, so exactly 30 is borderline.
 */
export function toldApart(points: number): ToldApart {
  if (Math.abs(points - 30) < 0.005) return "borderline";
  if (points > 30) return "yes";
  return points >= 20 ? "large-areas-only" : "no";
}

/** What is less than this share of all that is seen is not taken for the room's dark or light; our own choice, no source. */
const LEAST_SEEN = 0.01;

/**
 * The light reflectance below which the darkest hundredth of an area lies, and above which the lightest: what the eye takes for the
 * room's dark and light. The walls of a room are nine tenths of what is seen, so a dark sofa is a few parts in a hundred. Null for
 * nothing.
 */
export function darkAndLight(
  areas: readonly { readonly lrv: number; readonly areaMm2: number }[],
): { readonly dark: number; readonly light: number } | null {
  const whole = areas.reduce((a, s) => a + s.areaMm2, 0);
  if (whole <= 0) return null;
  const order = [...areas].sort((a, b) => a.lrv - b.lrv);
  const at = (part: number): number => {
    let sum = 0;
    for (const one of order) {
      sum += one.areaMm2;
      if (sum >= part * whole) return one.lrv;
    }
    return order.at(-1)?.lrv ?? 0;
  };
  return { dark: at(LEAST_SEEN), light: at(1 - LEAST_SEEN) };
}
