const FACE = /@font-face\s*\{[^}]*\}\s*/g;

/** A stretch of letters, by their numbers. */
type Stretch = readonly [from: number, to: number];

/** The letters that a face is for, by its `unicode-range`; all of them where it has none. */
function lettersOf(face: string): readonly Stretch[] {
  const said = /unicode-range:\s*([^;}]+)/.exec(face)?.[1];
  if (said === undefined) return [[0, 0x10ffff]];
  return [...said.matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/gi)].map(([, from = "0", to]) => [
    Number.parseInt(from, 16),
    Number.parseInt(to ?? from, 16),
  ]);
}

/** A style sheet without the faces of which a page has no letter; every letter of ASCII counts as there. */
export function facesFor(css: string, page: string): string {
  const letters = new Set<number>();
  for (const letter of page) letters.add(letter.codePointAt(0) as number);
  const has = ([from, to]: Stretch): boolean => {
    if (from < 0x80) return true;
    for (const letter of letters) if (letter >= from && letter <= to) return true;
    return false;
  };
  return css.replace(FACE, (face) => (lettersOf(face).some(has) ? face : ""));
}
