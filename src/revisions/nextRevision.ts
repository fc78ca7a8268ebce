/** The revision that follows one: the next letter or number; null where there is none that all would expect. */
export function nextRevision(revision: string): string | null {
  if (/^\d{1,6}$/.test(revision)) return String(Number(revision) + 1);
  if (/^[A-Ya-y]$/.test(revision)) return String.fromCharCode(revision.charCodeAt(0) + 1);
  return null;
}
