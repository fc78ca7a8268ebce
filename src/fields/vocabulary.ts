/**
 * Words that mean the same on the two sides of the Atlantic, or in the two halves of the trade. The reader of files takes any of a
 * group for any other, as a key and as a value; documents print those of the studio's language. Common usage, no single source.
 */
export const VOCABULARY: readonly (readonly string[])[] = [
  ["colour", "color"],
  ["colours", "colors"],
  ["mark-colour", "mark-color"],
  ["curtains", "curtain", "drapery", "draperies", "drapes"],
  ["cushion", "pillow", "throw-pillow", "scatter-cushion"],
  ["cushions", "pillows", "throw-pillows", "scatter-cushions"],
  ["blind", "shade", "roman-blind", "roman-shade"],
  ["blinds", "shades", "roman-blinds", "roman-shades"],
  ["roller-blind", "roller-shade"],
  ["roller-blinds", "roller-shades"],
  ["pelmet", "cornice", "cornice-board"],
  ["valance", "soft-pelmet"],
  ["tieback", "tie-back", "tie-band"],
  ["lampshade", "lamp-shade"],
  ["wallpaper", "wallcovering"],
  ["armchair", "easy-chair", "upholstered-chair"],
  ["seat-pad", "bench-pad", "squab"],
  ["panelled-wall", "paneled-wall"],
  ["panelling", "paneling"],
  ["moulding", "molding"],
  ["moulding-length", "molding-length"],
  ["sofa", "settee", "couch"],
  ["loveseat", "two-seater"],
  ["dining-chair", "side-chair"],
  ["drop-in-seat", "slip-seat"],
  ["ottoman", "footstool", "pouffe"],
  ["headboard", "bedhead"],
  ["upholstery", "re-upholstery", "reupholstery"],
  ["welt-cut", "piping-cut"],
  ["cloth", "fabric"],
  ["cloths", "fabrics"],
  ["plain", "solid"],
  ["eyelet", "eyelets", "grommet", "grommets"],
  ["slot", "rod-pocket", "slot-head"],
  ["pinch-pleat", "pinch-pleats", "triple-pleat", "triple-pleats"],
  ["pencil-pleat", "pencil-pleats"],
  ["welt", "piping", "welting"],
  ["welt-length", "piping-length"],
  ["trim", "trimming"],
  ["fibre", "fiber"],
  ["centred", "centered", "center", "centre"],
  ["metre", "meter", "m", "linear-metre", "linear-meter", "running-metre", "running-meter"],
  ["metres", "meters"],
  ["yard", "yd", "yds", "linear-yard", "running-yard"],
  ["square-metre", "square-meter", "square-metres", "square-meters", "sq-m", "sqm"],
  ["square-foot", "square-feet", "sq-ft", "sqft"],
  ["hour", "hr", "h"],
  ["centimetres", "centimeters", "cm", "metric"],
  ["inches", "inch", "in", "imperial"],
  ["pole", "rod"],
  ["pole-height", "rod-height"],
  ["skirting", "baseboard"],
  ["breast", "chimney-breast"],
  ["loose-covers", "slipcovers"],
  ["form", "shape"],
  ["zip", "zipper"],
  ["woodwork", "millwork"],
  ["half-drop", "drop-match", "half-drop-match"],
  ["straight", "straight-match"],
  ["free", "free-match", "random", "random-match"],
  ["stack-back", "stackback"],
  ["coverlet", "bedspread", "bedcover", "bed-cover", "counterpane"],
  ["bed-skirt", "bed-valance", "valance-sheet", "dust-ruffle"],
  ["runner", "bed-runner", "bed-scarf", "table-runner"],
  ["tablecloth", "table-cloth"],
  ["wadding", "batting"],
  ["box-pleat", "box-pleats", "box-pleated"],
];

const GROUPS: ReadonlyMap<string, readonly string[]> = new Map(
  VOCABULARY.flatMap((group) => group.map((word) => [word, group] as const)),
);

/** The other words of its group; none for a word that has no partner. */
export function partners(word: string): readonly string[] {
  return (GROUPS.get(word) ?? []).filter((other) => other !== word);
}

/** The one of `allowed` that means the same as `word`; undefined where none does. `word` itself where it is allowed. */
export function sameWord(word: string, allowed: Iterable<string>): string | undefined {
  const set = allowed instanceof Set ? (allowed as ReadonlySet<string>) : new Set(allowed);
  if (set.has(word)) return word;
  return partners(word).find((other) => set.has(other));
}
