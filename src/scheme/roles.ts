import type { ROLES } from "../records/schema/roomSchema.ts";
import { isPlain, type Swatch } from "../swatches/swatch.ts";
import type { SchemeInput } from "./schemeInput.ts";

export type Role = (typeof ROLES)[number];

export interface RoleOf {
  readonly cloth: string;
  readonly name: string;
  readonly role: Role;
  /** True where she fixed it in the room file. */
  readonly fixed: boolean;
  readonly motifMm: number | null;
  /** Its area as seen, mm2. */
  readonly areaMm2: number;
  /** Its share of all cloth and paper that is seen. */
  readonly shareOfCloth: number;
}

/** Motif heights from which a print is large; the limit between small and large is common practice, no source. */
export const LARGE_MOTIF_MM = 90;

/** Below this share of the seen cloth, and where it is vivid or an animal marking, a cloth is an accent; common practice, no source. */
const ACCENT_SHARE = 0.03;

interface Entry {
  readonly id: string;
  readonly fixed: Role | null;
}

/** The cloths of the mix in the order of the file, with the roles that were fixed. Linings never count as part of the mix. */
export function mixOf(input: SchemeInput): Entry[] {
  const listed = (input.room.fields.cloths ?? []).flatMap((c): Entry[] =>
    typeof c === "string"
      ? [{ id: c, fixed: null }]
      : Object.entries(c).map(([id, fixed]) => ({ id, fixed })),
  );
  const seen = [...new Set(input.seen.flatMap((s) => (s.cloth ? [s.cloth] : [])))]
    .sort()
    .map((id) => ({ id, fixed: null }));
  const all = [...listed, ...seen.filter((s) => !listed.some((l) => l.id === s.id))];
  return all.filter(({ id }) => {
    const type = input.cloths.get(id)?.fields.type ?? "cloth";
    return input.swatches.has(id) && type !== "lining" && type !== "interlining" && type !== "trim";
  });
}

function natural(swatch: Swatch, share: number, isMain: boolean, largeMm: number): Role {
  if (isMain) return "main";
  if (swatch.animal && share < 0.12) return "accent";
  if (isPlain(swatch)) return "plain";
  if (swatch.kind === "stripe" || swatch.kind === "check" || swatch.kind === "geometric")
    return share < ACCENT_SHARE ? "accent" : "geometric";
  const large = swatch.kind === "large-print" || (swatch.motifMm ?? 0) >= largeMm;
  if (large) return "supporting";
  return swatch.kind === "small-print"
    ? "small-print"
    : share < ACCENT_SHARE
      ? "accent"
      : "small-print";
}

/** How strongly a cloth claims to be the main one: large motifs first, then the area that is seen; a paper stands back for a cloth. */
function claim(swatch: Swatch, share: number, isPaper: boolean): number {
  if (isPlain(swatch)) return 0;
  const motif = swatch.motifMm ?? (swatch.kind === "large-print" ? LARGE_MOTIF_MM : 20);
  const print = swatch.kind === "large-print" ? 3 : swatch.kind === "irregular" ? 1.5 : 1;
  return (isPaper ? 0.4 : 1) * print * motif * Math.sqrt(0.02 + share);
}

/**
 * The role of each cloth of the mix: main (the largest print that has room to show), supporting (a second large print), geometric,
 * small print, plain, accent. Roles that she fixed stand. Order: by role, then area as seen.
 */
export function rolesOf(input: SchemeInput): RoleOf[] {
  const mix = mixOf(input);
  const area = (id: string): number =>
    input.seen.filter((s) => s.cloth === id).reduce((a, s) => a + s.areaMm2, 0);
  const whole = mix.reduce((a, m) => a + area(m.id), 0);
  const share = (id: string): number => (whole > 0 ? area(id) / whole : 0);
  const fixedMain = mix.some((m) => m.fixed === "main");
  const candidates = mix
    .filter((m) => m.fixed === null)
    .map((m) => ({
      id: m.id,
      claim: claim(
        input.swatches.get(m.id) as Swatch,
        share(m.id),
        input.cloths.get(m.id)?.fields.roll !== undefined,
      ),
    }))
    .filter((c) => c.claim > 0)
    .sort((a, b) => b.claim - a.claim || (a.id < b.id ? -1 : 1));
  const main = fixedMain ? null : (candidates[0]?.id ?? null);
  const order: readonly Role[] = [
    "main",
    "supporting",
    "geometric",
    "small-print",
    "plain",
    "accent",
  ];
  return mix
    .map(({ id, fixed }): RoleOf => {
      const swatch = input.swatches.get(id) as Swatch;
      return {
        cloth: id,
        name: swatch.name,
        role:
          fixed ?? natural(swatch, share(id), id === main, input.largeMotifMm ?? LARGE_MOTIF_MM),
        fixed: fixed !== null,
        motifMm: swatch.motifMm,
        areaMm2: area(id),
        shareOfCloth: share(id),
      };
    })
    .sort(
      (a, b) =>
        order.indexOf(a.role) - order.indexOf(b.role) ||
        b.areaMm2 - a.areaMm2 ||
        (a.cloth < b.cloth ? -1 : 1),
    );
}
