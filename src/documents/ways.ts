/** A link to another document of the same tree. */
export interface Way {
  readonly href: string;
  readonly text: string;
}

/** The path from one page to another, both below `out/`. */
export function wayTo(from: string, to: string): string {
  const a = from.split("/").slice(0, -1);
  const b = to.split("/");
  let same = 0;
  while (same < a.length && same < b.length - 1 && a[same] === b[same]) same++;
  return [...a.slice(same).map(() => ".."), ...b.slice(same)].join("/");
}
