import { difference } from "../colour/difference.ts";
import { wheelHue } from "../colour/wheel.ts";
import { isPlain, type Swatch } from "../swatches/swatch.ts";
import { isNeutral, SAME_COLOUR } from "./palette.ts";
import type { RoleOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";

/** Ways of mixing that are good in themselves, though they break the rules of another school; all common practice, no source. */
export type TraditionName =
  | "checks-together"
  | "toile-and-stripe"
  | "one-print-all-over"
  | "room-of-textures";

export interface Tradition {
  readonly name: TraditionName;
  readonly cloths: readonly string[];
}

/** The traditions that a room follows, and what they allow. */
export interface Traditions {
  readonly found: readonly Tradition[];
  /** True where two patterned cloths may stand together, touch, and be of near size. */
  readonly together: (one: string, other: string) => boolean;
  /** True where pattern may cover more than the usual share of what is seen. */
  readonly covers: boolean;
  readonly has: (name: TraditionName) => boolean;
}

/** Checks are the theme where they make at least this share of all pattern that is seen. */
const CHECKS_SHARE = 0.5;
/** A print is all over where it and its sisters cover this share of what is seen, in two kinds of place at least. */
const ALL_OVER_SHARE = 0.2;
/** Sisters: prints of which this share has the other's colours. */
const SISTERS = 0.75;

function areaOf(input: SchemeInput, cloth: string): number {
  return input.seen.filter((s) => s.cloth === cloth).reduce((a, s) => a + s.areaMm2, 0);
}

/** Share of a cloth's area in some of its colours. */
function shareOf(colours: Swatch["colours"]): number {
  return colours.reduce((a, c) => a + c.share, 0);
}

/** Share of a cloth's area in colours that another cloth has too. */
function sharedWith(one: Swatch, other: Swatch): number {
  return shareOf(
    one.colours.filter((c) => other.colours.some((o) => difference(c.hex, o.hex) <= SAME_COLOUR)),
  );
}

/** The hues of a cloth that show: those of at least three per cent of it. */
export function huesOf(swatch: Swatch): Set<string> {
  return new Set(
    swatch.colours.flatMap((c) => {
      const hue = c.share >= 0.03 && !isNeutral(c.hex) ? wheelHue(c.hex) : null;
      return hue ? [hue] : [];
    }),
  );
}

function checks(input: SchemeInput, patterned: readonly Swatch[]): Tradition[] {
  const mine = patterned.filter((s) => s.kind === "check");
  const sum = (all: readonly Swatch[]): number => all.reduce((a, s) => a + areaOf(input, s.id), 0);
  return mine.length >= 2 && sum(mine) >= CHECKS_SHARE * sum(patterned)
    ? [{ name: "checks-together", cloths: mine.map((s) => s.id) }]
    : [];
}

/** A large print of one colour on a ground, with a stripe of the same colour. */
function toile(patterned: readonly Swatch[]): Tradition[] {
  return patterned.flatMap((print): Tradition[] => {
    const vivid = print.colours.filter((c) => c.share >= 0.03 && !isNeutral(c.hex));
    const hues = huesOf(print);
    // A dye in two strengths, or on a cream that leans to yellow, may fall on neighbouring hues.
    const inks = vivid.filter((c) => c.lrv < 60);
    const oneInk = inks.every((c) =>
      inks.every((d) => wheelHue(c.hex) === wheelHue(d.hex) || difference(c.hex, d.hex) <= 25),
    );
    // Beside greys that take more of it than the ink does, it is one colour of several.
    const greys = print.colours.filter((c) => isNeutral(c.hex) && c.lrv < 60);
    const isLead = shareOf(inks) > shareOf(greys);
    if (print.kind !== "large-print" || !isLead || hues.size > 2 || !oneInk) return [];
    const stripes = patterned.filter(
      (s) =>
        s.kind === "stripe" &&
        s.colours.some(
          (c) =>
            !isNeutral(c.hex) &&
            inks.some(
              (i) => difference(c.hex, i.hex) <= SAME_COLOUR || wheelHue(c.hex) === wheelHue(i.hex),
            ),
        ),
    );
    return stripes.length > 0
      ? [{ name: "toile-and-stripe", cloths: [print.id, ...stripes.map((s) => s.id)] }]
      : [];
  });
}

/** One print, or prints of one colouring, on paper, windows and seats alike. */
function allOver(input: SchemeInput, patterned: readonly Swatch[]): Tradition[] {
  const prints = patterned
    .filter((s) => (s.kind === "large-print" || s.kind === "irregular") && !s.animal)
    .sort((a, b) => areaOf(input, b.id) - areaOf(input, a.id) || (a.id < b.id ? -1 : 1));
  const lead = prints[0];
  if (!lead) return [];
  const group = prints.filter(
    (p) => p === lead || (sharedWith(p, lead) >= SISTERS && sharedWith(lead, p) >= SISTERS),
  );
  const ids = group.map((g) => g.id);
  const parts = input.seen.filter((s) => s.cloth !== null && ids.includes(s.cloth));
  const places = new Set(
    parts.map((p) => (p.kind === "curtains" || p.kind === "blind" ? "window" : p.zone)),
  );
  const known = input.seen.filter((s) => s.cloth || s.colour || s.object);
  const whole = known.reduce((a, s) => a + s.areaMm2, 0);
  const share = parts.reduce((a, s) => a + s.areaMm2, 0) / (whole || 1);
  return places.size >= 2 && share >= ALL_OVER_SHARE
    ? [{ name: "one-print-all-over", cloths: ids }]
    : [];
}

function textures(
  input: SchemeInput,
  roles: readonly RoleOf[],
  patterned: readonly Swatch[],
): Tradition[] {
  const plains = roles.flatMap((r) => {
    const swatch = input.swatches.get(r.cloth);
    return swatch && isPlain(swatch) ? [swatch] : [];
  });
  const woven = plains.filter((s) => s.kind === "textured-plain");
  return plains.length >= 3 && woven.length >= 2 && patterned.filter((s) => !s.animal).length <= 1
    ? [{ name: "room-of-textures", cloths: plains.map((s) => s.id) }]
    : [];
}

/**
 * The traditions that a room follows: tartans or ginghams together; a toile with its ticking; one print, or prints of one
 * colouring, all over; a room of textures with at most one print. An animal marking is a neutral: a little of it may stand with anything.
 */
export function traditionsOf(input: SchemeInput, roles: readonly RoleOf[]): Traditions {
  const patterned = roles.flatMap((r) => {
    const swatch = input.swatches.get(r.cloth);
    return swatch && !isPlain(swatch) && r.areaMm2 > 0 ? [swatch] : [];
  });
  const found = [
    ...checks(input, patterned),
    ...toile(patterned),
    ...allOver(input, patterned),
    ...textures(input, roles, patterned),
  ];
  const has = (name: TraditionName): boolean => found.some((t) => t.name === name);
  const isNeutralMarking = (id: string): boolean =>
    input.swatches.get(id)?.animal === true && roles.find((r) => r.cloth === id)?.role === "accent";
  return {
    found,
    has,
    covers: has("checks-together") || has("toile-and-stripe") || has("one-print-all-over"),
    together: (one, other) =>
      isNeutralMarking(one) ||
      isNeutralMarking(other) ||
      found.some((t) => t.cloths.includes(one) && t.cloths.includes(other)),
  };
}
