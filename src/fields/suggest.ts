/**
 * Optimal string alignment distance: insertions, deletions, changes and swaps of neighbours, no letter touched twice.
 * R. A. Wagner and M. J. Fischer, "The String-to-String Correction Problem", J. ACM 21 (1974), with the swap of F. J. Damerau,
 * "A technique for computer detection and correction of spelling errors", CACM 7 (1964).
 */
export function alignmentDistance(a: string, b: string): number {
  const s = [...a];
  const t = [...b];
  let older: number[] = [];
  let old: number[] = Array.from({ length: t.length + 1 }, (_, j) => j);
  for (let i = 1; i <= s.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= t.length; j += 1) {
      const change = s[i - 1] === t[j - 1] ? 0 : 1;
      let best = Math.min(
        (old[j] as number) + 1,
        (row[j - 1] as number) + 1,
        (old[j - 1] as number) + change,
      );
      if (i > 1 && j > 1 && s[i - 1] === t[j - 2] && s[i - 2] === t[j - 1])
        best = Math.min(best, (older[j - 2] as number) + 1);
      row.push(best);
    }
    older = old;
    old = row;
  }
  return old[t.length] as number;
}

function folded(word: string): string {
  return word
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[\s_-]+/g, "-");
}

/** The nearest of some words to a mistyped one, or null where none is near: at most a third of its letters, and at most three, differ. */
export function nearest(word: string, candidates: Iterable<string>): string | null {
  const wanted = folded(word.slice(0, 60));
  let best: string | null = null;
  let least = Math.min(3, Math.max(1, Math.floor(wanted.length / 3))) + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - wanted.length) > 3) continue;
    const distance = alignmentDistance(wanted, folded(candidate));
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}
