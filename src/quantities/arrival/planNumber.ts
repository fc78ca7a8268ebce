import type { ClothPlan, LotUse } from "../quantityTypes.ts";

/** Figures and letters that a hand does not mix up: no I, L, O, U (after D. Crockford's base 32). */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * A short number for a cutting plan, `4KQ7-2B3`: it changes with any piece, place or start, so that a sheet and a release can be
 * held against each other. FNV-1a, 32 bits: two plans of one number are a chance of one in four thousand million, not a proof.
 */
export function planNumber(
  plan: Pick<ClothPlan, "pieces" | "starts" | "pattern">,
  cloth: {
    readonly cloth: string;
    readonly maker: string | null;
    readonly widthMm: string;
    readonly lots: readonly LotUse[];
  },
): string {
  const pieces = [...plan.pieces]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((p) =>
      [
        p.id,
        p.length,
        p.turned,
        ...[p.x, p.y, p.width, p.height].map((l) => l.mm.toFraction()),
      ].join(),
    );
  const text = [
    cloth.cloth,
    cloth.maker ?? "",
    cloth.widthMm,
    plan.pattern?.vertical.mm.toFraction() ?? "",
    ...plan.starts.map((start) => start.mm.toFraction()),
    ...pieces,
    // Of one lot it does not matter which; of several, each length is of its own.
    ...(cloth.lots.length > 1
      ? cloth.lots.map(({ lot, lengths }) => [lot, ...lengths].join())
      : []),
  ].join("\n");
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  let rest = hash >>> 0;
  let signs = "";
  for (let i = 0; i < 7; i++) {
    signs = (SIGNS[rest % 32] as string) + signs;
    rest = Math.floor(rest / 32);
  }
  return `${signs.slice(0, 4)}-${signs.slice(4)}`;
}
